import { statSync } from 'node:fs'
import { join } from 'node:path'
import Database from 'better-sqlite3'
import { eq } from 'drizzle-orm'
import { afterEach, describe, expect, test, vi } from 'vitest'
import { sideFile } from '@/db/house/side-file'
import { closeDatabase, connect, databaseFile, dataFolder, openDatabase, read, write } from '@/db/open'
import { season } from '@/db/schema'
import { start } from '@/db/start/start'
import { day } from '@/lib/units/day'
import { id } from '@/lib/units/id'
import { emptyStudio, found, stranger } from '../stage/studio'

const { folder } = emptyStudio()
afterEach(() => vi.unstubAllEnvs())

describe('a connection keeps what the record rests on', () => {
	test.each([
		['journal_mode', 'wal'],
		['synchronous', 2],
		['foreign_keys', 1],
		['recursive_triggers', 1],
		['busy_timeout', 5000],
	])('%s is %s, also when the file is opened again after a write', (name, value) => {
		for (const _ of ['first', 'again']) {
			const sqlite = connect(databaseFile(folder()))
			sqlite.exec('CREATE TABLE IF NOT EXISTS tried (a TEXT) STRICT')
			expect(sqlite.pragma(name, { simple: true })).toBe(value)
			sqlite.close()
		}
	})

	test('migrations alone go without foreign keys', () => {
		const sqlite = connect(databaseFile(folder()), { foreignKeys: false })
		expect(sqlite.pragma('foreign_keys', { simple: true })).toBe(0)
		sqlite.close()
	})

	test('a pragma that does not take is named', () => {
		expect(() => connect(':memory:')).toThrow('keeps journal_mode at memory instead of wal')
	})
})

describe('one connection a process', () => {
	test('nothing is read or written before it is open', () => {
		expect(() => read(() => 1)).toThrow('The database is not open yet.')
		expect(() => write(() => 1)).toThrow('The database is not open yet.')
		expect(() => sideFile()).toThrow('The side file is not open yet.')
	})

	test('the build opens nothing', () => {
		openDatabase(folder())
		vi.stubEnv('NEXT_PHASE', 'phase-production-build')
		expect(() => read(() => 1)).toThrow('The build must not open the database.')
	})

	test('a new folder is the owner’s alone', () => {
		const own = join(folder(), 'data')
		openDatabase(own)
		expect(statSync(own).mode & 0o777).toBe(0o700)
		expect(dataFolder()).toBe(own)
	})

	test('opening another closes the one before', () => {
		openDatabase(folder())
		const { sqlite } = found(globalThis.doorsillDatabase)
		openDatabase(join(folder(), 'other'))
		expect(sqlite.open).toBe(false)
		closeDatabase()
		closeDatabase()
		expect(globalThis.doorsillDatabase).toBeUndefined()
	})
})

const spring = {
	id: id<'season'>('01999999-0000-7000-8000-000000000001'),
	quarter: 'spring',
	year: 2027,
	windowFrom: day('2027-04-12'),
	windowTo: day('2027-04-23'),
	answerBy: day('2027-03-19'),
} as const
const kept = () => read((db) => db.select().from(season).where(eq(season.id, spring.id)).all())

describe('a change is one transaction', () => {
	test('it stands whole', () => {
		start(folder())
		write((tx) => tx.insert(season).values(spring).run())
		expect(kept()).toEqual([spring])
	})

	test('what throws in the midst of it leaves nothing', () => {
		start(folder())
		expect(() =>
			write((tx) => {
				tx.insert(season).values(spring).run()
				throw new Error('the lamp went out')
			}),
		).toThrow('the lamp went out')
		expect(kept()).toEqual([])
	})

	test('nothing in it can be awaited', () => {
		start(folder())
		expect(() => write(async (tx) => tx.insert(season).values(spring).run())).toThrow('cannot return a promise')
		expect(kept()).toEqual([])
	})

	test('it takes its turn before it reads: while another writes, it has not begun', () => {
		start(folder())
		found(globalThis.doorsillDatabase).sqlite.pragma('busy_timeout = 30')
		const change = vi.fn()
		stranger(folder(), (sqlite) => {
			sqlite.exec('BEGIN IMMEDIATE')
			expect(() => write(change)).toThrow(Database.SqliteError)
			sqlite.exec('COMMIT')
		})
		expect(change).not.toHaveBeenCalled()
		write(change)
		expect(change).toHaveBeenCalledOnce()
	})
})
