import { copyFileSync, existsSync, readdirSync, statSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { keepAttempt, readAttempt, sweepAttempts } from '@/db/house/attempts'
import { backUp, backUpDaily } from '@/db/house/backup'
import { noteLapses } from '@/db/house/lapse'
import { sideFile } from '@/db/house/side-file'
import { sweepOnce } from '@/db/house/sweep-once'
import { databaseFile } from '@/db/open'
import { verify } from '@/db/record/verify'
import { start } from '@/db/start/start'
import { addDays } from '@/lib/units/day'
import { stepsOf } from '../proposals/steps'
import { changesOf, refused, rowsIn } from '../stage/rows'
import { emptyFolder, fillDisk, found, later, remove, stranger, studio, today, utc } from '../stage/studio'

const of = studio()
const { publish, redraft } = stepsOf(of)
const others = ['designer', 'helper', 'bakeryApprover', 'nobody'] as const
const day = 86_400_000

describe('what has lapsed is noted', () => {
	const note = async (at: string) => noteLapses(await of.as('system'), of.stamp(utc(at)))

	// The vet is to answer by the 7th, the bakery and the dentist by the 9th.
	test('once each, from the morning after in the town', async () => {
		expect(await refused(of.folder(), () => note('2026-10-08T03:59'))).toBe(0)
		const { said, did } = await changesOf(of.folder(), () => note('2026-10-08T04:00'))
		expect([said, did]).toEqual([1, { proposal: '~1', event: '+1' }])
		expect(await refused(of.folder(), () => note('2026-10-08T04:00'))).toBe(0)
		expect(await note('2026-10-10T12:00')).toBe(2)
		const line = stranger(of.folder(), (sqlite) =>
			sqlite.prepare('SELECT actor, act FROM event ORDER BY seq DESC').get(),
		)
		expect(line).toEqual({ actor: 'system', act: 'proposal lapsed' })
	})

	test('anew for the next revision', async () => {
		await note('2026-10-08T04:00')
		await redraft('vet', (draft) => ({ ...draft, answerBy: addDays(today, 2) }))
		await publish('vet')
		expect(await refused(of.folder(), () => note('2026-10-08T04:00'))).toBe(0)
		expect(await note('2026-10-09T04:00')).toBe(1)
	})

	test('with its line, or not at all', async () => {
		fillDisk(of.folder(), 'event')
		await refused(of.folder(), () => expect(note('2026-12-31T12:00')).rejects.toThrow('the disk is full'))
	})

	test.each(others)('not for %s', async (who) => {
		const viewer = await of.as(who)
		expect(await refused(of.folder(), () => noteLapses(viewer, of.stamp(utc('2026-12-31T12:00'))))).toBe(0)
	})
})

describe('a backup', () => {
	const back = async (at = of.cast().now) => found(await backUp(await of.as('system'), { at }))

	test('holds every row, starts, and its record is whole', async () => {
		const [rows, file] = [rowsIn(of.folder()), await back()]
		expect(file).toBe(join(of.folder(), 'backup', 'studio-2026-10-06T160000.db'))
		const elsewhere = emptyFolder()
		copyFileSync(file, databaseFile(elsewhere))
		start(elsewhere)
		expect(rowsIn(elsewhere)).toEqual(rows)
		expect(await verify(await of.as('system'))).toMatchObject({ broken: null })
		remove(elsewhere)
	})

	test('holds what was written a moment before, though it lies in the log yet', async () => {
		await publish('bicycles')
		const file = await back()
		const copy = emptyFolder()
		copyFileSync(file, databaseFile(copy))
		expect(rowsIn(copy)).toEqual(rowsIn(of.folder()))
		remove(copy)
	})

	const daily = async (at = of.cast().now) => backUpDaily(await of.as('system'), { at })

	test('of the day is made when the newest is twenty hours old, whatever else was copied by hand', async () => {
		expect(await daily()).toBe(join(of.folder(), 'backup', 'daily-2026-10-06T160000.db'))
		await back(later(of.cast().now, day / 2))
		expect(await daily(later(of.cast().now, day / 2))).toBeUndefined()
		expect(await daily(later(of.cast().now, day))).toBe(join(of.folder(), 'backup', 'daily-2026-10-07T160000.db'))
	})

	test('of the day is kept for fourteen, and none that was made by hand pushes it out', async () => {
		for (let night = 0; night < 16; night += 1) await daily(later(of.cast().now, night * day))
		for (let minute = 0; minute < 16; minute += 1) await back(later(of.cast().now, minute * 60_000))
		const kept = readdirSync(join(of.folder(), 'backup')).toSorted()
		expect(kept.filter((name) => name.startsWith('daily-'))).toHaveLength(14)
		expect(kept[0]).toBe('daily-2026-10-08T160000.db')
	})

	test('that was broken off stands for none, and is swept by the next', async () => {
		await daily()
		const folder = join(of.folder(), 'backup')
		writeFileSync(join(folder, 'daily.coming'), 'half')
		await daily(later(of.cast().now, day))
		expect(readdirSync(folder)).toHaveLength(2)
	})

	test('by hand is kept among fourteen, where only the owner looks', async () => {
		for (let night = 0; night < 16; night += 1) await back(later(of.cast().now, night * day))
		const kept = readdirSync(join(of.folder(), 'backup')).filter((name) => name.endsWith('.db'))
		expect(kept).toHaveLength(14)
		expect(kept.toSorted()[0]).toBe('studio-2026-10-08T160000.db')
		expect(statSync(join(of.folder(), 'backup')).mode & 0o777).toBe(0o700)
	})

	test.each(others)('not for %s', async (who) => {
		expect(await backUp(await of.as(who), of.stamp())).toBeUndefined()
		expect(await backUpDaily(await of.as(who), of.stamp())).toBeUndefined()
		expect(existsSync(join(of.folder(), 'backup'))).toBe(false)
	})
})

describe('what was typed into a form that went wrong', () => {
	const typed = { typed: { letter: 'Frost, and', container: ['a', 'b'] }, errors: { answerBy: 'Say by when.' } }

	test.each(['designer', 'bakeryApprover', 'nobody'] as const)('is read back by %s, who typed it', async (who) => {
		const [viewer, key] = [await of.as(who), of.once()]
		await refused(of.folder(), () => keepAttempt(viewer, key, typed, of.stamp()))
		expect(await readAttempt(viewer, key)).toEqual(typed)
	})

	test.each([
		'helper',
		'bakerySecondApprover',
		'bakeryViewer',
		'dentalApprover',
		'designer',
		'nobody',
		'system',
	] as const)('and not by %s', async (who) => {
		const key = of.once()
		await keepAttempt(await of.as('bakeryApprover'), key, typed, of.stamp())
		expect(await readAttempt(await of.as(who), key)).toBeUndefined()
		expect(await readAttempt(await of.as(who), of.once())).toBeUndefined()
	})

	test('typed again, the later stands', async () => {
		const [viewer, key] = [await of.as('designer'), of.once()]
		await keepAttempt(viewer, key, typed, of.stamp())
		await keepAttempt(viewer, key, { typed: { letter: 'Rust' }, errors: {} }, of.stamp())
		expect(await readAttempt(viewer, key)).toEqual({ typed: { letter: 'Rust' }, errors: {} })
	})

	test('is swept away after an hour', async () => {
		const [viewer, system, key] = [await of.as('designer'), await of.as('system'), of.once()]
		await keepAttempt(viewer, key, typed, of.stamp())
		await sweepAttempts(system, { at: later(of.cast().now, 3_600_000) })
		expect(await readAttempt(viewer, key)).toEqual(typed)
		await sweepAttempts(system, { at: later(of.cast().now, 3_600_001) })
		expect(await readAttempt(viewer, key)).toBeUndefined()
		expect(sideFile().prepare('SELECT count(*) FROM attempt').pluck().get()).toBe(0)
	})
})

describe('keys of forms', () => {
	test('are swept away after thirty days', async () => {
		const sweep = async (at: string) => sweepOnce(await of.as('system'), { at: utc(at) })
		const kept = () =>
			rowsIn(of.folder())
				.once?.map((row) => JSON.parse(row)[2])
				.toSorted() ?? []
		const oldest = Date.parse(kept()[0])
		await refused(of.folder(), () => sweep(new Date(oldest + 30 * day).toISOString().slice(0, -1)))
		await sweep(new Date(oldest + 30 * day + 1).toISOString().slice(0, -1))
		expect(Date.parse(kept()[0])).toBeGreaterThan(oldest)
		await sweep('2027-10-06T12:00')
		expect(kept()).toEqual([])
	})

	test.each(others)('not by %s', async (who) => {
		const viewer = await of.as(who)
		await refused(of.folder(), () => sweepOnce(viewer, { at: utc('2027-10-06T12:00') }))
	})
})
