import { eq } from 'drizzle-orm'
import { beginAgreement, saveTerms } from '@/db/agreements/draft'
import { issueAgreement } from '@/db/agreements/issue'
import { type Payment, recordPayment } from '@/db/money/acts/record-payment'
import { billDue, billNow } from '@/db/money/bills/bill-due'
import { savePayWords } from '@/db/money/pay-words'
import { readAccount } from '@/db/money/read-account'
import { write } from '@/db/open'
import { append } from '@/db/record/append'
import { seal } from '@/db/record/seal'
import { agreement, agreementSignature } from '@/db/schema'
import type { ClientKey } from '@/demo/cast/clients'
import type { ContainerKey } from '@/demo/cast/sites/containers'
import { must } from '@/demo/play/must'
import type { AnyPersonKey } from '@/demo/play/stage'
import type { Plan } from '@/lib/agreement/instalment/plan'
import { emptyTerms } from '@/lib/agreement/terms'
import type { Season } from '@/lib/season/season'
import { cents } from '@/lib/units/cents'
import { day, type Moment } from '@/lib/units/day'
import type { Id } from '@/lib/units/id'
import { type Studio, stranger } from '../stage/studio'

type Agreeing = {
	readonly client: ClientKey
	readonly by: AnyPersonKey
	readonly containers: readonly ContainerKey[]
	readonly cents: number
	readonly plan: Plan
	readonly season?: Season
	readonly at?: Moment
}

/** What a test of money needs done before its own act; each step has to succeed. */
export function moneyOf(of: Studio) {
	const idOf = (client: ClientKey) => of.cast().clients[client].id
	const designer = () => of.as('designer')
	return {
		byHand: async (client: ClientKey | null = null, at?: Moment) =>
			must('bill', await billNow(await designer(), { client: client && idOf(client) }, of.stamp(at))),
		byItself: async (at?: Moment) => billDue(await of.as('system'), of.stamp(at)),
		sayHowToPay: async () => must('pay', await savePayWords(await designer(), 'By check, to Reed & Lamp.', of.stamp())),
		account: async (client: ClientKey, at?: Moment) =>
			must(client, await readAccount(await designer(), idOf(client), of.stamp(at))),
		pay: async (client: ClientKey, amount: number, rest: Partial<Payment> = {}) => {
			const paid = { client: idOf(client), on: day('2026-10-05'), cents: cents(amount), means: 'check' } as const
			const payment = { ...paid, reference: '1042', invoice: null, keepRest: false, ...rest }
			return recordPayment(await designer(), payment, of.stamp())
		},
		/** An agreement that both sides have signed; the client's signature is put there as its own act puts it. */
		agree: async ({ client, by, containers, cents: price, plan, at, season }: Agreeing): Promise<Id<'agreement'>> => {
			const who = await designer()
			const { id } = must(client, await beginAgreement(who, { client: idOf(client) }, of.stamp(at)))
			const terms = {
				...emptyTerms,
				...{ from: day('2026-12-01'), to: day('2027-11-30'), plan },
				seasons: [
					{
						...(season ?? { quarter: 'spring' as const, year: 2027 }),
						price: { is: 'fixed' as const, cents: cents(price) },
						containers: containers.map((key) => of.cast().containers[key]),
						visits: [{ kind: 'install' as const, count: 1 }],
					},
				],
				said: {
					...emptyTerms.said,
					waters: 'client' as const,
					lightsDownBy: day('2027-02-15'),
					law: 'the State of Westmere',
				},
			}
			const { version } = must(client, await saveTerms(who, { agreement: id, version: 1, terms }, of.stamp(at)))
			const issuing = { agreement: id, version, signBy: day('2027-11-01'), once: of.once() }
			const { hash } = must(client, await issueAgreement(who, issuing, of.stamp(at)))
			const viewer = await of.as(by)
			const { id: person } = of.cast().people[by]
			write((tx) => {
				const stamp = of.stamp(at)
				const words = seal(tx, stamp, idOf(client), { name: 'signed in a test' })
				const signed = {
					id: stamp.id<'signature'>(),
					document: hash,
					side: 'client',
					words,
					by: person,
					at: stamp.at,
				} as const
				tx.insert(agreementSignature).values(signed).run()
				tx.update(agreement)
					.set({ state: 'signed', inForce: hash, holdsUntil: terms.to })
					.where(eq(agreement.id, id))
					.run()
				const line = { act: 'agreement signed', object: `agreement ${id}`, client: idOf(client) } as const
				append(tx, stamp, viewer, { ...line, facts: { number: 1, document: hash }, sealed: words })
			})
			return id
		},
		end: (id: Id<'agreement'>, on: string) =>
			stranger(of.folder(), (sqlite) =>
				sqlite.prepare("UPDATE agreement SET state = 'ended', holds_until = ? WHERE id = ?").run(on, id),
			),
		numbers: () =>
			stranger(of.folder(), (sqlite) =>
				sqlite.prepare<[], string>('SELECT number FROM invoice ORDER BY rowid').pluck().all(),
			),
	}
}
