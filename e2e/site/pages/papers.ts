import { beginAgreement } from '@/db/agreements/draft'
import { billNow } from '@/db/money/bills/bill-due'
import { readMoney } from '@/db/money/read-money'
import { viewerOf } from '@/db/viewer'
import { must } from '@/demo/play/must'
import type { Seeded } from '@/demo/seed'
import { stampsFrom } from '@/demo/stamps'
import type { InvoiceNumber } from '@/lib/money/invoice/number'
import { moment } from '@/lib/units/day'
import type { Id } from '@/lib/units/id'
import { issuedTo } from '../agreement'
import { onPaper } from '../on-paper'
import type { Site } from '../server'
import { inRecordOf } from '../session'

type Papers = {
	/** The dentist’s agreement. */
	readonly drafted: Id<'agreement'>
	/** The vet’s. */
	readonly toSign: Id<'agreement'>
	/** The bakery’s. */
	readonly signed: Id<'agreement'>
	/** For the design that was approved in its second revision. */
	readonly invoice: InvoiceNumber
}

/** The cast, and papers in each state that a page shows. */
export type Papered = Seeded & { readonly papers: Papers }

type Drawn = Pick<Papers, 'drafted' | 'invoice'>

async function drawnUp({ cast: { clients, people } }: Pick<Site, 'cast'>): Promise<Drawn> {
	const stampAt = stampsFrom('papers')
	const stamp = () => stampAt(moment(new Date()))
	const designer = await viewerOf(people.designer.id)
	const { id } = must('begin', await beginAgreement(designer, { client: clients.dental.id }, stamp()))
	must('bill', await billNow(designer, { client: clients.approved.id }, stamp()))
	const money = await readMoney(designer, stamp())
	const [invoice] = money?.clients.find((each) => each.id === clients.approved.id)?.account.invoices ?? []
	if (invoice === undefined) throw new Error('drawnUp: nothing was billed')
	return { drafted: id, invoice: invoice.number }
}

/** Draws them up in the site's own record. */
export async function paperedIn(site: Pick<Site, 'folder' | 'cast'>): Promise<Papered> {
	const toSign = await issuedTo(site, 'vet')
	const signed = await issuedTo(site, 'bakery')
	await onPaper(site, signed)
	const drawn: Drawn[] = []
	await inRecordOf(site, async () => {
		drawn.push(await drawnUp(site))
	})
	const [rest] = drawn
	if (rest === undefined) throw new Error('paperedIn: nothing was drawn up')
	return { ...site.cast, papers: { toSign, signed, ...rest } }
}
