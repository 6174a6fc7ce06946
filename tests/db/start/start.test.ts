import { existsSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import Database from 'better-sqlite3'
import { afterEach, describe, expect, test, vi } from 'vitest'
import { verify } from '@/db/record/verify'
import { checkSchema, isDemo, start } from '@/db/start/start'
import { keysOf } from '@/demo/play/keys'
import { rowsIn } from '../stage/rows'
import { close, emptyStudio, found, stranger, studio } from '../stage/studio'

const guards = [
	'agreement_consent_no_delete',
	'agreement_consent_no_replace',
	'agreement_consent_no_update',
	'agreement_document_no_delete',
	'agreement_document_no_replace',
	'agreement_document_no_update',
	'agreement_opening_no_delete',
	'agreement_opening_no_replace',
	'agreement_opening_no_update',
	'agreement_paper_no_delete',
	'agreement_paper_no_replace',
	'agreement_paper_no_update',
	'agreement_signature_no_delete',
	'agreement_signature_no_replace',
	'agreement_signature_no_update',
	'agreement_template_no_delete',
	'agreement_template_no_replace',
	'agreement_template_no_update',
	'answer_no_delete',
	'answer_no_replace',
	'answer_no_update',
	'credit_note_no_delete',
	'credit_note_no_replace',
	'credit_note_no_update',
	'entry_no_delete',
	'entry_no_replace',
	'entry_no_update',
	'erasure_no_delete',
	'erasure_no_replace',
	'erasure_no_update',
	'event_in_order',
	'event_no_delete',
	'event_no_replace',
	'event_no_update',
	'invoice_no_delete',
	'invoice_no_replace',
	'invoice_no_update',
	'rates_no_delete',
	'rates_no_replace',
	'rates_no_update',
	'revision_no_delete',
	'revision_no_replace',
	'revision_no_update',
	'sealed_text_no_delete',
	'sealed_text_no_replace',
	'sealed_text_no_update',
] as const

const tables = [
	'agreement',
	'agreement_consent',
	'agreement_document',
	'agreement_draft',
	'agreement_opening',
	'agreement_paper',
	'agreement_signature',
	'agreement_template',
	'answer',
	'client',
	'collection',
	'contact',
	'container',
	'credit_note',
	'draft',
	'draft_material',
	'entry',
	'erasure',
	'event',
	'invoice',
	'invoice_asked',
	'known_device',
	'material',
	'once',
	'outbox',
	'pack',
	'person',
	'photo',
	'place',
	'proposal',
	'rates',
	'recipe',
	'recipe_line',
	'revision',
	'sealed_text',
	'season',
	'session',
	'set_up',
	'sign_in_token',
	'site_colour',
	'staff',
	'stock',
	'studio',
	'supplier',
	'trait',
	'visit',
] as const

const namesOf = (folder: string, type: 'table' | 'trigger') =>
	stranger(folder, (sqlite) =>
		sqlite
			.prepare<[string], string>('SELECT name FROM sqlite_master WHERE type = ? ORDER BY name')
			.pluck()
			.all(type)
			.filter((name) => !name.startsWith('__') && !name.startsWith('sqlite_')),
	)

describe('an empty folder', () => {
	const { folder } = emptyStudio()

	test('becomes a studio’s, with every table and every guard, and nothing in them', async () => {
		start(folder())
		expect(namesOf(folder(), 'table')).toEqual(tables)
		expect(namesOf(folder(), 'trigger')).toEqual(guards)
		expect(Object.values(rowsIn(folder())).flat()).toEqual([])
		expect(existsSync(join(folder(), 'side.db'))).toBe(true)
	})

	test('is no demo without its mark', () => {
		expect(isDemo(folder())).toBe(false)
		writeFileSync(join(folder(), 'demo'), '')
		expect(isDemo(folder())).toBe(true)
	})
})

describe('a studio’s file', () => {
	const of = studio()
	const schema = () =>
		stranger(of.folder(), (sqlite) => sqlite.prepare('SELECT * FROM sqlite_master ORDER BY name').all())
	const steps = () => stranger(of.folder(), (sqlite) => sqlite.prepare('SELECT * FROM __drizzle_migrations').all())

	test('starts again without a change', async () => {
		const before = { rows: rowsIn(of.folder()), schema: schema(), steps: steps() }
		start(of.folder())
		start(of.folder())
		expect({ rows: rowsIn(of.folder()), schema: schema(), steps: steps() }).toEqual(before)
		expect(await verify(await of.as('designer'))).toMatchObject({ broken: null })
	})

	/** Rebuilt as SQLite's own manual has it, "Making Other Kinds Of Table Schema Changes", all but the one word. */
	function rebuildLax(table: string): void {
		close()
		stranger(of.folder(), (sqlite) => {
			const sql = found(
				sqlite.prepare<[string], string>('SELECT sql FROM sqlite_master WHERE name = ?').pluck().get(table),
			)
			const rebuilt = sql
				.replace(/ STRICT$/, '')
				.replace(/^CREATE TABLE [`"]\w+[`"]/, 'CREATE TABLE `rebuilt`')
				.replaceAll(`"${table}".`, '')
			expect(rebuilt).not.toBe(sql)
			sqlite.pragma('foreign_keys = off')
			sqlite.pragma('legacy_alter_table = on')
			sqlite.exec(`BEGIN; ${rebuilt}; INSERT INTO rebuilt SELECT * FROM "${table}"; DROP TABLE "${table}"`)
			sqlite.exec(`ALTER TABLE rebuilt RENAME TO "${table}"; COMMIT`)
		})
	}

	test.each(tables)('does not start when %s was rebuilt and is not STRICT any more', (table) => {
		rebuildLax(table)
		expect(() => start(of.folder())).toThrow(`The table ${table} is not STRICT any more.`)
	})

	test('a backup whose table is lax is known before it is put in place', () => {
		rebuildLax('stock')
		stranger(of.folder(), (sqlite) =>
			expect(() => checkSchema(sqlite)).toThrow('The table stock is not STRICT any more.'),
		)
	})

	test.each(guards)('does not start without the guard %s', (guard) => {
		stranger(of.folder(), (sqlite) => sqlite.exec(`DROP TRIGGER ${guard}`))
		expect(() => start(of.folder())).toThrow(`The trigger ${guard}, which guards the evidence, is gone.`)
	})

	test('does not start when a row points at nothing', () => {
		const visits = stranger(of.folder(), (sqlite) => {
			const { autumn } = of.cast().seasons
			sqlite.pragma('foreign_keys = off')
			sqlite.prepare('DELETE FROM season WHERE id = ?').run(autumn)
			return sqlite.prepare<[string], number>('SELECT count(*) FROM visit WHERE season_id = ?').pluck().get(autumn)
		})
		expect(() => start(of.folder())).toThrow(
			`After the migrations ${keysOf(of.cast().autumn).length + found(visits)} rows point at nothing.`,
		)
	})
})

// SQLite's release notes: 3.51.3 of 2026-03-13 mends the write-ahead log's corruption by two connections.
describe('the version of SQLite', () => {
	const { folder } = emptyStudio()
	afterEach(() => vi.restoreAllMocks())

	function pretend(version: string): void {
		const real = Database.prototype.prepare
		vi.spyOn(Database.prototype, 'prepare').mockImplementation(function (this: Database.Database, sql) {
			return real.call(this, sql.replace('sqlite_version()', `'${version}'`))
		})
	}

	test.each(['3.51.2', '3.50.4', '3.9.9', '2.99.99'])('%s is too old', (version) => {
		pretend(version)
		expect(() => start(folder())).toThrow(`SQLite ${version} is too old: 3.51.3 or newer is needed.`)
	})

	test.each(['3.51.3', '3.53.2', '3.100.0', '4.0.0'])('%s is new enough', (version) => {
		pretend(version)
		expect(() => start(folder())).not.toThrow()
	})
})
