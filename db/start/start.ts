import { existsSync } from 'node:fs'
import { join } from 'node:path'
import type Database from 'better-sqlite3'
import { drizzle } from 'drizzle-orm/better-sqlite3'
import { migrate } from 'drizzle-orm/better-sqlite3/migrator'
import { openSideFile } from '../house/side-file'
import { connect, databaseFile, openDatabase, write } from '../open'
import { weighDrafts } from '../proposals/desk/weigh-drafts'

const migrations = join(process.cwd(), 'db', 'schema', 'migrations')

/** The migrator's own table, made by the library. */
const notOurs = new Set(['__drizzle_migrations'])

const evidence = [
	'revision',
	'answer',
	'event',
	'erasure',
	'rates',
	'sealed_text',
	'agreement_template',
	'agreement_document',
	'agreement_opening',
	'agreement_consent',
	'agreement_signature',
	'agreement_paper',
	'invoice',
	'credit_note',
	'entry',
] as const
const kinds = ['no_update', 'no_delete', 'no_replace'] as const
const triggers = [...evidence.flatMap((table) => kinds.map((kind) => `${table}_${kind}`)), 'event_in_order']

/** On a connection of its own without foreign keys: a rebuilt table must not take its children along. */
function bringUpToDate(folder: string): void {
	const sqlite = connect(databaseFile(folder), { foreignKeys: false })
	try {
		migrate(drizzle(sqlite), { migrationsFolder: migrations })
		const broken = sqlite.pragma('foreign_key_check')
		if (Array.isArray(broken) && broken.length > 0)
			throw new Error(
				`After the migrations ${broken.length} rows point at nothing. Restore the backup and report this.`,
			)
	} finally {
		sqlite.close()
	}
}

/** SQLite 3.51.3 mended a corruption of the write-ahead log that two connections could bring about. */
function checkVersion(sqlite: Database.Database): void {
	const version = String(sqlite.prepare('SELECT sqlite_version()').pluck().get())
	const [major = 0, minor = 0, patch = 0] = version.split('.').map(Number)
	if (major * 1e6 + minor * 1e3 + patch < 3_051_003)
		throw new Error(`SQLite ${version} is too old: 3.51.3 or newer is needed.`)
}

/** @throws naming the first table that lost STRICT or the first trigger that is gone: a rebuilt table drops both silently */
export function checkSchema(sqlite: Database.Database): void {
	const tables = sqlite
		.prepare<[], { name: string; strict: number }>('SELECT name, strict FROM pragma_table_list')
		.all()
	const lax = tables.find(({ name, strict }) => strict === 0 && !name.startsWith('sqlite_') && !notOurs.has(name))
	if (lax !== undefined) throw new Error(`The table ${lax.name} is not STRICT any more.`)
	const there = sqlite.prepare<[], string>("SELECT name FROM sqlite_master WHERE type = 'trigger'").pluck().all()
	const gone = triggers.find((name) => !there.includes(name))
	if (gone !== undefined) throw new Error(`The trigger ${gone}, which guards the evidence, is gone.`)
}

/** Opens the studio's file, brought up to date and checked. @throws with one clear sentence when it may not be used */
export function start(folder: string): void {
	openDatabase(folder)
	bringUpToDate(folder)
	const open = globalThis.doorsillDatabase
	if (open === undefined) throw new Error('The database did not open.')
	checkVersion(open.sqlite)
	checkSchema(open.sqlite)
	// Drafts of a version that did not weigh them yet.
	write((tx) => weighDrafts(tx, 'unweighed'))
	openSideFile(folder)
}

/** A demo is a mark in the data folder, put there by the program that seeds it. */
export const isDemo = (folder: string): boolean => existsSync(join(folder, 'demo'))
