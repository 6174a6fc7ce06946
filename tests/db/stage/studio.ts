import { copyFileSync, existsSync, mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import Database from 'better-sqlite3'
import { afterEach, beforeAll, beforeEach } from 'vitest'
import { closeSideFile } from '@/db/house/side-file'
import { closeDatabase, databaseFile } from '@/db/open'
import type { Stamp } from '@/db/stamp'
import { start } from '@/db/start/start'
import { viewerOf } from '@/db/viewer'
import type { AnyPersonKey } from '@/demo/play/stage'
import type { Seeded } from '@/demo/seed'
import { stampsFrom } from '@/demo/stamps'
import type { Viewer } from '@/lib/access/viewer'
import { type Moment, moment } from '@/lib/units/day'
import type { Id } from '@/lib/units/id'
import { played, type Template } from './template'

export { today } from './template'

/** What was found. @throws when nothing was */
export function found<T>(value: T | undefined): T {
	if (value === undefined) throw new Error('Nothing was found.')
	return value
}

/** In memory where the machine has a place for it: else waiting for the disk at each commit is most of the time. */
const root = existsSync('/dev/shm') ? '/dev/shm' : tmpdir()
export const emptyFolder = (): string => mkdtempSync(join(root, 'doorsill-store-'))

export const remove = (folder: string): void => rmSync(folder, { recursive: true, force: true })

export function close(): void {
	closeDatabase()
	closeSideFile()
}

/** A moment of UTC; Wrenholt is four hours behind it in October. */
export const utc = (text: string): Moment => moment(new Date(`${text}Z`))
export const later = (at: Moment, ms: number): Moment => moment(new Date(Date.parse(at) + ms))

/** A folder of its own for each test, with nothing in it; what a test leaves open is closed. */
export function emptyStudio(): { readonly folder: () => string } {
	let folder = ''
	beforeEach(() => {
		folder = emptyFolder()
	})
	afterEach(() => {
		close()
		remove(folder)
	})
	return { folder: () => folder }
}

type Who = AnyPersonKey | 'nobody' | 'system'

export type Studio = {
	readonly folder: () => string
	readonly cast: () => Seeded
	/** For one act: at noon in the town when nothing else is said. */
	readonly stamp: (at?: Moment) => Stamp
	readonly once: () => Id<'once'>
	readonly as: (who: Who) => Promise<Viewer>
}

/** To play it anew on a busy machine. */
const playedMs = 60_000

/** The cast's studio, played once; each test has a copy of its own, open. */
export function studio(): Studio {
	const { folder } = emptyStudio()
	let template: Template | undefined
	let stamps = stampsFrom('a test')
	const cast = () => found(template).cast
	beforeAll(async () => {
		template = await played(emptyFolder)
	}, playedMs)
	beforeEach(() => {
		stamps = stampsFrom('a test')
		copyFileSync(found(template).file, databaseFile(folder()))
		start(folder())
	})
	const stamp = (at: Moment = cast().now) => stamps(at)
	const as = (who: Who) => viewerOf(who === 'nobody' || who === 'system' ? who : cast().people[who].id)
	return { folder, cast, stamp, once: () => stamp().id<'once'>(), as }
}

/** A connection of a stranger to the same file: the library's own settings, nothing of ours. */
export function stranger<T>(folder: string, act: (sqlite: Database.Database) => T): T {
	const sqlite = new Database(databaseFile(folder))
	try {
		return act(sqlite)
	} finally {
		sqlite.close()
	}
}

/** From now on every `act` on `table` fails in the midst of whatever it is part of. */
export const fillDisk = (folder: string, table: string, act: 'INSERT' | 'UPDATE' = 'INSERT'): void =>
	stranger(folder, (sqlite) => {
		sqlite.exec(`CREATE TRIGGER full BEFORE ${act} ON ${table} BEGIN SELECT RAISE(ABORT, 'the disk is full'); END`)
	})
