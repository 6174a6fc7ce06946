import { randomBytes } from 'node:crypto'
import { v7 } from 'uuid'
import { agreementsToSign } from '@/db/agreements/studio/list'
import { readLate } from '@/db/money/read-money'
import { closeDatabase, openDatabase } from '@/db/open'
import { publish } from '@/db/proposals/publish'
import type { Stamp } from '@/db/stamp'
import { seasonPage } from '@/db/studio/season-page'
import { clientsWithout, listSeasons } from '@/db/studio/seasons'
import { viewerOf } from '@/db/viewer'
import { addDays } from '@/lib/units/day'
import { id } from '@/lib/units/id'
import { startSite } from '../../e2e/site/server'
import { sessionFor } from '../../e2e/site/session'
import prepare from '../../e2e/template'
import { manyDrafts } from '../faults/many-drafts'
import { seededStudio } from '../faults/studio'
import { median, row } from './row'
import { seasonOf } from './season-clients'

const stampOf = (at: Stamp['at']): Stamp => ({
	at,
	id: <Of extends string>() => id<Of>(v7()),
	salt: () => randomBytes(16),
})

/** Publishing two hundred: what is there afterwards, and whether the last take longer than the first. */
async function publishing(): Promise<void> {
	const { folder, cast } = await seededStudio()
	const drafts = manyDrafts(folder, cast.proposals.bicycles, 200)
	openDatabase(folder)
	const designer = await viewerOf(cast.people.designer.id)
	const sqlite = globalThis.doorsillDatabase?.sqlite
	const count = (sql: string) => Number(sqlite?.prepare(sql).pluck().get())
	const all = () => [
		count("SELECT count(*) FROM event WHERE act = 'proposal published'"),
		count("SELECT count(*) FROM outbox WHERE message = 'proposal published'"),
		count('SELECT count(*) FROM revision'),
	]
	const before = all()
	const times: number[] = []
	for (const draft of drafts) {
		const start = performance.now()
		const publishing = {
			proposal: id<'proposal'>(draft),
			version: 1,
			once: id<'once'>(v7()),
			within: cast.seasons.winter,
		}
		const done = await publish(designer, publishing, stampOf(cast.now))
		if (!done.ok) throw new Error(`publishing: ${done.why}`)
		times.push(performance.now() - start)
	}
	const made = all().map((after, index) => after - (before[index] ?? 0))
	closeDatabase()
	const isAll = made.every((each) => each === 200)
	row('publishing 200: lines, mails and revisions', made.join(', '), '200 each', isAll)
	const [first, second] = [median(times.slice(0, 100)), median(times.slice(100))]
	row('publishing one of 200', `${median(times).toFixed(1)} ms`, 'told', true)
	row('the second hundred against the first', (second / first).toFixed(2), 'at most 1.25', second / first <= 1.25)
}

type Site = Awaited<ReturnType<typeof startSite>>

/** How often the database is asked for one season page, counted where a statement runs. */
async function asked({ folder, cast }: Site): Promise<number> {
	openDatabase(folder)
	const sqlite = globalThis.doorsillDatabase?.sqlite
	const statement: { all: (...values: unknown[]) => unknown } = Object.getPrototypeOf(sqlite?.prepare('SELECT 1'))
	const { all } = statement
	let count = 0
	statement.all = function counted(this: unknown, ...values: unknown[]) {
		count += 1
		return all.apply(this, values)
	}
	const designer = await viewerOf(cast.people.designer.id)
	await seasonPage(designer, { season: cast.seasons.winter, page: 1 }, stampOf(cast.now))
	await listSeasons(designer)
	await clientsWithout(designer, cast.seasons.winter)
	await agreementsToSign(designer, stampOf(cast.now))
	await readLate(designer, stampOf(cast.now))
	statement.all = all
	closeDatabase()
	return count
}

async function msFor({ url, cast }: Site, cookie: string): Promise<number> {
	const start = performance.now()
	const page = await fetch(`${url}/studio/season/${cast.seasons.winter}`, { headers: { cookie } })
	await page.text()
	if (page.status !== 200) throw new Error(`The season page answered ${page.status}.`)
	return performance.now() - start
}

await publishing()
prepare()
const sizes = [100, 1000, 5000] as const
const sites: { readonly size: number; readonly site: Site; readonly cookie: string; readonly times: number[] }[] = []
for (const size of sizes) {
	const site = await startSite('')
	seasonOf(site.folder, site.cast.seasons.winter, size, addDays(site.cast.today, 9))
	const cookie = `doorsill=${await sessionFor(site, site.cast.people.designer.id)}`
	sites.push({ size, site, cookie, times: [] })
}
for (const { site, cookie } of sites) for (let n = 0; n < 20; n += 1) await msFor(site, cookie)
for (let round = 0; round < 14; round += 1)
	for (const { site, cookie, times } of round % 2 === 0 ? sites : sites.toReversed())
		for (let n = 0; n < 5; n += 1) times.push(await msFor(site, cookie))
const questions: number[] = []
for (const { site } of sites) questions.push(await asked(site))
for (const { size, times } of sites)
	row(`season page at ${size} clients`, `${median(times).toFixed(1)} ms`, 'told', true)
const ratio = median(sites[2]?.times ?? []) / median(sites[0]?.times ?? [])
row('season page at 5,000 clients against 100', ratio.toFixed(2), 'at most 1.5', ratio <= 1.5)
row(
	'questions to the database at 100, 1,000 and 5,000',
	questions.join(', '),
	'the same',
	new Set(questions).size === 1,
)
for (const { site } of sites) await site.stop()
