import { existsSync, readdirSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { eraseClient } from '@/db/clients/erase'
import { type Keeping, keepVisit, startVisit } from '@/db/clients/visits/keep-visit'
import { photoFile } from '@/db/clients/visits/photos/photo-file'
import { readNewVisit, readVisit } from '@/db/clients/visits/read-visit'
import { readVisits } from '@/db/clients/visits/read-visits'
import { reportWrong } from '@/db/clients/visits/report-wrong'
import { visitsOf } from '@/db/clients/visits/visits-of'
import { sweepPhotos } from '@/db/house/sweep-photos'
import { verify } from '@/db/record/verify'
import { seasonPage } from '@/db/studio/season-page'
import { must } from '@/demo/play/must'
import { SentBefore } from '@/lib/record/sent-before'
import { day } from '@/lib/units/day'
import { id } from '@/lib/units/id'
import { changesOf, refused } from '../stage/rows'
import { fillDisk, found, stranger, studio } from '../stage/studio'

const of = studio()
type Who = Parameters<typeof of.as>[0]

const bytes = (text: string) => new Uint8Array(Buffer.from(text))
const photo = (text: string, side: 'before' | 'after' | 'wrong' = 'after') =>
	({ side, large: bytes(text), small: bytes(`${text}, small`), width: 1600, height: 1200 }) as const
const keeping = (
	command: Keeping['command'],
	more: Partial<Keeping['written']> = {},
	photos: Keeping['photos'] = [],
): Keeping => ({
	command,
	written: {
		kind: 'check',
		place: null,
		came: 'Tobin',
		clientNote: 'Mended.',
		studioNote: 'Wire.',
		out: [],
		tell: true,
		...more,
	},
	photos,
})
const made = { do: 'record', day: day('2026-10-05') } as const
const globe = () => of.cast().visits.globe
const keep = async (who: Who, visit = globe(), what = keeping(made)) =>
	keepVisit(await of.as(who), visit, what, of.stamp())
const onDisk = () => {
	const folder = join(of.folder(), 'photos')
	return existsSync(folder) ? readdirSync(folder).toSorted() : []
}
const one = (sql: string, ...values: string[]) =>
	stranger(of.folder(), (sqlite) =>
		sqlite
			.prepare<string[]>(sql)
			.pluck()
			.get(...values),
	)
const messages = () =>
	stranger(of.folder(), (sqlite) =>
		sqlite.prepare('SELECT message FROM outbox WHERE created_at = ?').pluck().all(of.cast().now),
	)
const report = async (who: Who, photos = [photo('wrong', 'wrong')]) => {
	const { places, clients } = of.cast()
	const said = { words: 'A globe broke.', place: places.bakery, photos }
	return reportWrong(await of.as(who), clients.bakery.id, said, of.stamp())
}

describe('a client says that something is wrong', () => {
	test.each(['bakeryApprover', 'bakeryViewer'] as const)(
		'%s: a visit to plan, with its event, its mail and its photo',
		async (who) => {
			const { did, said } = await changesOf(of.folder(), () => report(who))
			expect(did).toEqual({ event: '+1', outbox: '+1', photo: '+1', visit: '+1' })
			const { visit } = must('report', said)
			const book = found(await readVisits(await of.as('helper'), of.stamp()))
			expect(book.toPlan.map((each) => [each.id, each.reported])).toContainEqual([visit, 'A globe broke.'])
			expect(messages()).toEqual(['something is wrong'])
			expect(onDisk()).toHaveLength(2)
			const { visits } = found(await visitsOf(await of.as(who), of.cast().clients.bakery.id, of.stamp()))
			expect(visits.find((each) => each.id === visit)).toMatchObject({ state: 'to plan', reported: 'A globe broke.' })
		},
	)

	test.each(['dentalApprover', 'designer', 'helper', 'nobody', 'system'] as const)('not %s', async (who) => {
		expect(await refused(of.folder(), () => report(who))).toEqual({ ok: false, why: 'hidden' })
		expect(onDisk()).toEqual([])
	})

	test('not about another client’s place', async () => {
		const { places, clients } = of.cast()
		const said = { words: 'Ours?', place: places.dental, photos: [photo('theirs', 'wrong')] }
		const act = async () => reportWrong(await of.as('bakeryApprover'), clients.bakery.id, said, of.stamp())
		expect(await refused(of.folder(), act)).toEqual({ ok: false, why: 'hidden' })
		expect(onDisk()).toEqual([])
	})

	test('stands at the season that was installed last, and on its page', async () => {
		const { clients, seasons } = of.cast()
		expect(one('SELECT season_id FROM visit WHERE id = ?', globe())).toBe(seasons.winter)
		const page = found(await seasonPage(await of.as('designer'), { season: seasons.winter, page: 1 }, of.stamp()))
		expect(page.visitsToPlan).toBe(1)
		expect(page.rows.filter(({ wrong }) => wrong !== null).map(({ client, wrong }) => [client, wrong])).toEqual([
			[clients.installed.id, globe()],
		])
	})
})

describe('a visit', () => {
	test('is planned, and its client sees for when', async () => {
		const planned = keeping({ do: 'plan', day: day('2026-10-09') })
		const { did } = await changesOf(of.folder(), () => keep('designer', globe(), planned))
		expect(did).toEqual({ event: '+1', visit: '~1' })
		const { visits } = found(
			await visitsOf(await of.as('installedApprover'), of.cast().clients.installed.id, of.stamp()),
		)
		expect(visits.find((each) => each.id === globe())).toMatchObject({ state: 'planned', day: '2026-10-09' })
	})

	test('is written down by the helper, and every contact hears of it', async () => {
		const { did } = await changesOf(of.folder(), () => keep('helper', of.cast().visits.dentalWatering))
		expect(did).toEqual({ event: '+1', outbox: '+2', visit: '~1' })
		expect(messages()).toEqual(['visit made', 'visit made'])
	})

	test('is put right without a mail, and stays made at the moment it was', async () => {
		const before = one('SELECT done_at FROM visit WHERE id = ?', of.cast().visits.bakeryInstall)
		const right = keeping({ do: 'record', day: day('2026-09-15') }, { tell: false, clientNote: 'Corrected.' })
		const { did } = await changesOf(of.folder(), () => keep('designer', of.cast().visits.bakeryInstall, right))
		expect(did).toEqual({ event: '+1', visit: '~1' })
		expect(one('SELECT done_at FROM visit WHERE id = ?', of.cast().visits.bakeryInstall)).toBe(before)
	})

	test.each([
		['next century', { do: 'plan', day: day('2126-10-05') }, 'too far ahead'],
		['made tomorrow', { do: 'record', day: day('2026-10-07') }, 'not yet'],
	] as const)('%s is refused, and nothing is kept', async (_, command, why) => {
		const what = keeping(command, {}, [photo('x')])
		expect(await refused(of.folder(), () => keep('designer', globe(), what))).toEqual({ ok: false, why })
		const where = { client: of.cast().clients.bakery.id, season: of.cast().seasons.winter }
		const start = async () => startVisit(await of.as('designer'), where, what, of.stamp())
		expect(await refused(of.folder(), start)).toEqual({ ok: false, why })
		expect(onDisk()).toEqual([])
	})

	test('shows its client nothing of what the studio notes', async () => {
		const { visits } = found(await visitsOf(await of.as('bakeryViewer'), of.cast().clients.bakery.id, of.stamp()))
		expect(visits).toHaveLength(2)
		expect(JSON.stringify(visits)).not.toContain('drain hole')
		expect(JSON.stringify(visits)).not.toContain('studioNote')
	})

	test('goes through once by its form’s key', async () => {
		const designer = await of.as('designer')
		const once = of.once()
		const where = { client: of.cast().clients.bakery.id, season: of.cast().seasons.autumn }
		const act = () => startVisit(designer, where, keeping(made, {}, [photo('twice')]), { ...of.stamp(), once })
		must('first', await act())
		const files = onDisk()
		await refused(of.folder(), () => expect(act()).rejects.toThrow(SentBefore))
		expect(onDisk()).toEqual(files)
	})
})

describe('an install', () => {
	const install = async (
		client: 'creditUnion' | 'approved' | 'bakery',
		place: 'creditUnion' | 'creditUnionBranch' | null,
	) => {
		const { clients, seasons, places } = of.cast()
		const where = { client: clients[client].id, season: seasons.winter }
		const what = keeping(made, { kind: 'install', place: place === null ? null : places[place] })
		return startVisit(await of.as('helper'), where, what, { ...of.stamp(), once: of.once() })
	}
	const stateOf = (client: 'creditUnion' | 'approved' | 'bakery') =>
		one('SELECT state FROM proposal WHERE id = ?', of.cast().proposals[client])

	test('puts the approved design in, in the same act', async () => {
		must('install', await install('approved', null))
		expect(stateOf('approved')).toBe('installed')
		expect(await verify(await of.as('system'))).toMatchObject({ broken: null })
	})

	test('puts it in once every place was reached', async () => {
		must('first', await install('creditUnion', 'creditUnion'))
		expect(stateOf('creditUnion')).toBe('approved')
		must('second', await install('creditUnion', 'creditUnionBranch'))
		expect(stateOf('creditUnion')).toBe('installed')
	})

	test('of a design that nobody approved is refused', async () => {
		expect(await refused(of.folder(), () => install('bakery', null))).toEqual({ ok: false, why: 'not approved' })
	})
})

describe('photos', () => {
	const photos = [photo('a', 'before'), photo('b'), photo('b')]
	const withPhotos = () => keep('designer', globe(), keeping(made, {}, photos))
	const idOf = (text: string) => {
		const name = found(onDisk().find((each) => each.endsWith('-large.jpg') && text === each))
		return id<'photo'>(name.slice(0, 36))
	}

	test('the same twice is one; both files are there, whole, and nothing else', async () => {
		const { did } = await changesOf(of.folder(), withPhotos)
		expect(did.photo).toBe('+2')
		expect(onDisk().map((name) => name.slice(36))).toEqual(['-large.jpg', '-small.jpg', '-large.jpg', '-small.jpg'])
	})

	test('are for those who may see the client, and not there for others', async () => {
		await withPhotos()
		const first = idOf(found(onDisk()[0]))
		const seen = async (who: Who) => (await photoFile(await of.as(who), first, 'large'))?.length
		for (const who of ['designer', 'helper', 'installedApprover'] as const) expect(await seen(who), who).toBe(1)
		for (const who of ['bakeryApprover', 'nobody', 'system'] as const) expect(await seen(who), who).toBeUndefined()
	})

	test('taken out go with their files, another visit’s do not', async () => {
		await withPhotos()
		const first = idOf(found(onDisk()[0]))
		must('other', await keep('designer', of.cast().visits.bakeryInstall, keeping(made, { out: [first], tell: false })))
		expect(onDisk()).toHaveLength(4)
		must('own', await keep('designer', globe(), keeping(made, { out: [first], tell: false })))
		expect(onDisk()).toHaveLength(2)
	})

	test.each(['photo', 'event', 'outbox'])('leave no file when %s cannot be written', async (table) => {
		fillDisk(of.folder(), table)
		await refused(of.folder(), () => expect(withPhotos()).rejects.toThrow('the disk is full'))
		expect(onDisk()).toEqual([])
	})

	test('without a row are swept, others stay', async () => {
		await withPhotos()
		const kept = onDisk()
		const left = of.stamp().id<'photo'>()
		for (const name of [`${left}-large.jpg`, `${left}-small.jpg.coming`])
			writeFileSync(join(of.folder(), 'photos', name), 'left by a crash')
		expect(await sweepPhotos(await of.as('system'))).toBe(1)
		expect(onDisk()).toEqual(kept)
	})
})

describe('erasing a client', () => {
	test('takes the words and photos of their visits, and the record still holds', async () => {
		must('report', await report('bakeryApprover'))
		const client = of.cast().clients.bakery.id
		must('erase', await eraseClient(await of.as('designer'), client, of.stamp()))
		expect(onDisk()).toEqual([])
		expect(one('SELECT count(*) FROM photo WHERE client_id = ?', client)).toBe(0)
		expect(
			one(
				"SELECT count(*) FROM visit WHERE client_id = ? AND (came || client_note || studio_note || reported <> '' OR state IN ('to plan', 'planned'))",
				client,
			),
		).toBe(0)
		expect(await verify(await of.as('system'))).toMatchObject({ broken: null })
	})

	test('nothing is planned for them any more', async () => {
		const { clients, seasons, visits } = of.cast()
		const designer = await of.as('designer')
		must('erase', await eraseClient(designer, clients.installed.id, of.stamp()))
		const hidden = { ok: false, why: 'hidden' }
		expect(await keep('designer')).toEqual(hidden)
		const where = { client: clients.installed.id, season: seasons.winter }
		expect(await startVisit(designer, where, keeping(made), of.stamp())).toEqual(hidden)
		expect(await readVisit(designer, visits.globe, of.stamp())).toBeUndefined()
		expect(await readNewVisit(designer, clients.installed.id, of.stamp())).toBeUndefined()
	})
})
