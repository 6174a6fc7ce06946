import { randomBytes } from 'node:crypto'
import { v7 } from 'uuid'
import { recordPaper } from '@/db/agreements/studio/paper'
import { agreementDesk } from '@/db/agreements/studio/read-desk'
import { endingIn } from '@/db/agreements/studio/renew'
import type { Stamp } from '@/db/stamp'
import { viewerOf } from '@/db/viewer'
import { manyClients } from '@/demo/many'
import { must } from '@/demo/play/must'
import type { Viewer } from '@/lib/access/viewer'
import { priceBox } from '@/lib/agreement/studio/form/renew-form'
import { amountText } from '@/lib/agreement/studio/form/terms-text'
import type { EndingAgreement } from '@/lib/agreement/studio/shown'
import { addDays, dayOf, moment } from '@/lib/units/day'
import { type ClientId, id } from '@/lib/units/id'
import { issueTo } from '../../e2e/site/issue-to'
import { countIn, mailsToSend } from '../../e2e/site/record'
import { type Site, startSite } from '../../e2e/site/server'
import { inRecordOf, sessionFor } from '../../e2e/site/session'
import prepare from '../../e2e/template'
import { median, row } from './row'

const count = 200
/** As many as the page sends at once. */
const atOnce = 5

const stamp = (): Stamp => ({
	at: moment(new Date()),
	id: <Of extends string>() => id<Of>(v7()),
	salt: () => randomBytes(16),
})
const today = ({ cast }: Site) => dayOf(moment(new Date()), cast.studio.timeZone)

/** A year that both have signed, the client on paper. */
async function signed(site: Site, designer: Viewer, client: ClientId): Promise<void> {
	const signBy = addDays(today(site), 14)
	const agreement = await issueTo({ designer, stamp, signBy }, client, addDays(signBy, 1))
	const document = (await agreementDesk(designer, agreement, stamp()))?.row.issued
	if (document === undefined || document === null) throw new Error('renewing: nothing was issued')
	const given = { signer: 'Ada', signedOn: today(site), scan: Buffer.from('a page'), once: stamp().id<'once'>() }
	must('paper', await recordPaper(designer, { agreement, document, ...given }, stamp()))
}

/** Two hundred that end in the next year, each at 4 % more. */
async function endings(site: Site): Promise<readonly EndingAgreement[]> {
	const found: EndingAgreement[] = []
	await inRecordOf(site, async () => {
		const designer = await viewerOf(site.cast.people.designer.id)
		for (const client of await manyClients(designer, count, stamp())) await signed(site, designer, client)
		const year = Number(addDays(today(site), 14 + 365).slice(0, 4))
		const renewal = { rise: { is: 'percent', percent: 4 }, stepCents: 500, adjusted: [] } as const
		found.push(...((await endingIn(designer, year, () => renewal, stamp()))?.endings ?? []))
	})
	return found
}

/** What the page sends of a few: their ticks, and the prices in their boxes. */
function body(site: Site, once: string, few: readonly EndingAgreement[]): URLSearchParams {
	const prices = few.flatMap(({ id: of, next }) =>
		next.seasons.flatMap(({ season, is }) => (is === null ? [] : [[priceBox(of, season), amountText(is)]])),
	)
	const picks = few.map((each) => ['pick', each.id])
	return new URLSearchParams([['once', once], ['signBy', addDays(today(site), 21)], ...prices, ...picks])
}

prepare()
const site = await startSite('')
const cookie = `doorsill=${await sessionFor(site, site.cast.people.designer.id)}`
const all = await endings(site)
const made = () => [
	countIn(site, 'SELECT count(*) FROM agreement WHERE renews IS NOT NULL'),
	countIn(site, "SELECT count(*) FROM event WHERE act = 'agreement issued'") - count,
	countIn(site, "SELECT count(*) FROM outbox WHERE message = 'agreement issued'") - count,
]

/** The mails of what was signed are long out before it is renewed. */
while (mailsToSend(site) > 0) await new Promise((resolve) => setTimeout(resolve, 500))

const opened = performance.now()
const page = await fetch(`${site.url}/studio/agreements/renew?year=${all[0]?.to.slice(0, 4)}&rise=4`, {
	headers: { cookie },
})
const boxes = (await page.text()).split('name="pick"').length - 1
row(`the page of ${boxes} to renew`, `${(performance.now() - opened).toFixed(0)} ms`, 'told', boxes === count)

const once = v7()
const times: number[] = []
const start = performance.now()
for (let at = 0; at < all.length; at += atOnce) {
	const began = performance.now()
	const said = await fetch(`${site.url}/studio/agreements/renew/send`, {
		method: 'POST',
		headers: { cookie, accept: 'application/json', origin: site.url },
		body: body(site, once, all.slice(at, at + atOnce)),
	})
	const text = await said.text()
	if (said.status !== 200 || text.split('"says":null').length - 1 !== atOnce)
		throw new Error(`renewing: ${said.status} ${text.slice(0, 300)}`)
	times.push(performance.now() - began)
}
const seconds = (performance.now() - start) / 1000
row(`renewing ${all.length} agreements, ${atOnce} at a time`, `${seconds.toFixed(2)} s`, 'under 5 s', seconds < 5)
const longest = Math.max(...times)
row('the longest between two words of how far it is', `${longest.toFixed(0)} ms`, 'under 500 ms', longest < 500)
const half = times.length / 2
const ratio = median(times.slice(half)) / median(times.slice(0, half))
row('the second hundred against the first', ratio.toFixed(2), 'at most 1.25', ratio <= 1.25)
row(
	'renewing 200: agreements, lines of the record, mails',
	made().join(', '),
	'200 each',
	made().every((each) => each === count),
)
await site.stop()
