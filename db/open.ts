import { mkdirSync } from 'node:fs'
import { join } from 'node:path'
import Database from 'better-sqlite3'
import { type BetterSQLite3Database, drizzle } from 'drizzle-orm/better-sqlite3'
import * as schema from './schema'

export type Db = BetterSQLite3Database<typeof schema>
/** The inside of an immediate transaction: only `write` makes one, so nothing outside `db/` can hold it. */
export type Tx = Parameters<Parameters<Db['transaction']>[0]>[0]
/** Where a read runs: inside a transaction or beside it. */
export type Reading = Db | Tx

type Open = { readonly folder: string; readonly sqlite: Database.Database; readonly db: Db }

declare global {
	/** One connection a process, whichever bundle asks first. */
	var doorsillDatabase: Open | undefined
}

export const databaseFile = (folder: string) => join(folder, 'studio.db')

/** A connection with the promises that the record rests on, read back: a pragma that did not take stops the start. */
export function connect(file: string, { foreignKeys = true } = {}): Database.Database {
	const sqlite = new Database(file)
	const wanted = {
		journal_mode: 'wal',
		synchronous: 2,
		foreign_keys: foreignKeys ? 1 : 0,
		recursive_triggers: 1,
		secure_delete: 1,
		busy_timeout: 5000,
	}
	for (const [name, value] of Object.entries(wanted)) {
		sqlite.pragma(`${name} = ${value}`)
		const is = sqlite.pragma(name, { simple: true })
		if (is !== value) throw new Error(`The database at ${file} keeps ${name} at ${String(is)} instead of ${value}.`)
	}
	return sqlite
}

export function openDatabase(folder: string): void {
	closeDatabase()
	mkdirSync(folder, { recursive: true, mode: 0o700 })
	const sqlite = connect(databaseFile(folder))
	globalThis.doorsillDatabase = { folder, sqlite, db: drizzle(sqlite, { schema }) }
}

export function closeDatabase(): void {
	globalThis.doorsillDatabase?.sqlite.close()
	globalThis.doorsillDatabase = undefined
}

function opened(): Open {
	if (process.env.NEXT_PHASE === 'phase-production-build') throw new Error('The build must not open the database.')
	if (globalThis.doorsillDatabase === undefined) throw new Error('The database is not open yet.')
	return globalThis.doorsillDatabase
}

export const dataFolder = (): string => opened().folder

export function read<T>(ask: (db: Db) => T): T {
	return ask(opened().db)
}

/**
 * A statement that is built once for a connection and asked many times: building one costs ten times what asking does.
 * There is one connection, so within a transaction it is the transaction's.
 */
export function prepared<T>(make: (db: Db) => T): (_within: Reading) => T {
	let known: { readonly db: Db; readonly made: T } | undefined
	return () => {
		const { db } = opened()
		known = known?.db === db ? known : { db, made: make(db) }
		return known.made
	}
}

/** One immediate transaction: it waits for its turn at the start, and nothing in it is awaited. */
export function write<T>(change: (tx: Tx) => T): T {
	return opened().db.transaction(change, { behavior: 'immediate' })
}
