import type Database from 'better-sqlite3'
import { beforeEach, describe, expect, test } from 'vitest'
import { saveTemplate } from '@/db/agreements/template'
import { connect, databaseFile } from '@/db/open'
import { must } from '@/demo/play/must'
import { defaultTemplate } from '@/lib/agreement/template/default-template'
import { agreementsOf } from '../agreements/steps'
import { rowsIn } from '../stage/rows'
import { found, stranger, studio } from '../stage/studio'

const of = studio()
const { issued } = agreementsOf(of)

/** Agreements are no part of the play. */
beforeEach(async () => {
	const changed = { version: 1, clauses: defaultTemplate.clauses.slice(1) }
	must('template', await saveTemplate(await of.as('designer'), changed, of.stamp()))
	await issued('vet')
})

/** As the site is connected, and as anybody is who opens the file with the library's own settings. */
const connections = {
	'our connection': <T>(act: (sqlite: Database.Database) => T): T => {
		const sqlite = connect(databaseFile(of.folder()))
		try {
			return act(sqlite)
		} finally {
			sqlite.close()
		}
	},
	'a stranger’s connection': <T>(act: (sqlite: Database.Database) => T): T => stranger(of.folder(), act),
} as const

const erase = (client: string) =>
	stranger(of.folder(), (sqlite) =>
		sqlite.exec(`
			INSERT INTO erasure VALUES ('of ${client}', '${client}', '2026-10-06T12:00:00.000Z', 'the designer');
			INSERT INTO event SELECT max(seq) + 1, 'told of ${client}', hash, '2026-10-06T12:00:00.000Z', 'staff the designer',
				'client erased', 'client ${client}', '${client}', '{}', NULL FROM event;
		`),
	)

const columnsOf = (sqlite: Database.Database, table: string) =>
	sqlite.prepare<[string], string>('SELECT name FROM pragma_table_info(?) ORDER BY cid').pluck().all(table)

type Write = (sqlite: Database.Database, table: string) => string

/** Puts a row in the place of an old one: like it in every column but those that are given anew. */
const pushOut =
	(anew: Readonly<Record<string, string>>): Write =>
	(sqlite, table) => {
		const names = [...new Set([...columnsOf(sqlite, table), ...Object.keys(anew)])]
		const values = names.map((name) => anew[name] ?? `"${name}"`)
		return `INSERT OR REPLACE INTO ${table} (${names.map((name) => `"${name}"`)}) SELECT ${values} FROM ${table} LIMIT 1`
	}

const upsert: Write = (sqlite, table) => {
	const column = found(columnsOf(sqlite, table).at(-1))
	return `INSERT INTO ${table} SELECT * FROM ${table} WHERE true LIMIT 1 ON CONFLICT DO UPDATE SET "${column}" = excluded."${column}"`
}

const evidence = [
	...(['revision', 'answer', 'event', 'erasure', 'rates', 'sealed_text'] as const),
	...(['agreement_template', 'agreement_document', 'agreement_signature'] as const),
] as const
const writes: readonly (readonly [string, Write])[] = [
	['UPDATE', (sqlite, table) => `UPDATE ${table} SET "${columnsOf(sqlite, table).at(-1)}" = '0'`],
	['UPDATE that changes nothing', (_, table) => `UPDATE ${table} SET rowid = rowid`],
	['UPDATE OR REPLACE', (_, table) => `UPDATE OR REPLACE ${table} SET rowid = 1`],
	['UPDATE OR IGNORE', (_, table) => `UPDATE OR IGNORE ${table} SET rowid = rowid + 1000`],
	['DELETE of one', (_, table) => `DELETE FROM ${table} WHERE rowid = (SELECT min(rowid) FROM ${table})`],
	['DELETE of all', (_, table) => `DELETE FROM ${table}`],
	['INSERT OR REPLACE', pushOut({})],
	['REPLACE INTO', (_, table) => `REPLACE INTO ${table} SELECT * FROM ${table} LIMIT 1`],
	['an upsert', upsert],
]

const another = "'another'"
const nextSeq = '(SELECT max(seq) + 1 FROM event)'
const unanswered = '(SELECT id FROM revision WHERE id NOT IN (SELECT revision_id FROM answer) LIMIT 1)'

/** Beside its key, an old row can be pushed out by any other unique column, and by its hidden row number. */
const pushes: readonly (readonly [(typeof evidence)[number], string, Readonly<Record<string, string>>])[] = [
	['revision', 'its hash', { id: another, number: '99' }],
	['revision', 'its number', { id: another, hash: another }],
	['revision', 'its row', { rowid: 'rowid', id: another, hash: another, number: '99' }],
	['answer', 'its revision', { id: another, reference: another }],
	['answer', 'its reference', { id: another, revision_id: unanswered }],
	['answer', 'its row', { rowid: 'rowid', id: another, reference: another, revision_id: unanswered }],
	['event', 'its hash', { seq: nextSeq, prev: another }],
	['event', 'the line before it', { seq: nextSeq, hash: another }],
	['erasure', 'its row', { rowid: 'rowid', id: another }],
	['sealed_text', 'its row', { rowid: 'rowid', hash: another }],
	['agreement_document', 'its number', { hash: another }],
	['agreement_document', 'its row', { rowid: 'rowid', hash: another, number: '99', supersedes: another }],
	['agreement_signature', 'its side', { id: another }],
	['agreement_signature', 'its row', { rowid: 'rowid', id: another, side: "'client'" }],
]

const refusal = /(evidence is never altered|only an erasure may delete|event: out of order)$/

describe.each(Object.keys(connections).filter((name): name is keyof typeof connections => name in connections))(
	'evidence is refused to %s',
	(name) => {
		const connected = connections[name]

		function isRefused(write: Write, table: string): void {
			erase(of.cast().clients.newcomer.id)
			const before = rowsIn(of.folder())
			connected((sqlite) => {
				const sql = write(sqlite, table)
				expect(() => sqlite.exec(sql), sql).toThrow(refusal)
			})
			expect(rowsIn(of.folder())).toEqual(before)
		}

		describe.each(evidence)('%s', (table) => {
			test.each(writes)('%s', (_, write) => isRefused(write, table))
		})

		test.each(pushes)('%s, pushed out by %s', (table, _, anew) => isRefused(pushOut(anew), table))
	},
)

describe('a row of evidence that is new is taken', () => {
	test.each([
		['revision', { id: another, hash: another, number: '99' }],
		['answer', { id: another, reference: another, revision_id: unanswered }],
		['event', { seq: nextSeq, hash: another, prev: another }],
		['erasure', { id: another }],
		['rates', { version: '7' }],
		['sealed_text', { hash: another }],
		['agreement_template', { version: '9' }],
		['agreement_document', { hash: another, number: '99', supersedes: another }],
		['agreement_signature', { id: another, side: "'client'" }],
	] as const)('%s', (table, anew) => {
		erase(of.cast().clients.newcomer.id)
		connections['our connection']((sqlite) =>
			expect(sqlite.prepare(pushOut(anew)(sqlite, table)).run().changes).toBe(1),
		)
	})
})

describe('a line of the record stands next after the last', () => {
	const line = (seq: string) => pushOut({ seq, hash: another, prev: "'another line'" })
	test.each([
		['one is left out', '(SELECT max(seq) + 2 FROM event)'],
		['the last comes twice', '(SELECT max(seq) FROM event)'],
		['before the first', '0'],
		['below nothing', '-1'],
	])('not when %s', (_, seq) => {
		connections['our connection']((sqlite) =>
			expect(() => sqlite.exec(line(seq)(sqlite, 'event'))).toThrow('event: out of order'),
		)
	})
})

describe('sealed words', () => {
	const deleteOf = (where: string, ...values: string[]) =>
		stranger(of.folder(), (sqlite) => sqlite.prepare(`DELETE FROM sealed_text WHERE ${where}`).run(...values).changes)
	const idOf = (client: 'dental' | 'vet') => of.cast().clients[client].id

	beforeEach(() => {
		erase(idOf('dental'))
	})

	test('of a client who was erased may go', () => {
		expect(deleteOf('client_id = ?', idOf('dental'))).toBeGreaterThan(2)
	})

	test('of another may not, nor those together with it', () => {
		const before = rowsIn(of.folder())
		expect(() => deleteOf('client_id = ?', idOf('vet'))).toThrow('only an erasure may delete')
		expect(() => deleteOf('client_id IN (?, ?)', idOf('dental'), idOf('vet'))).toThrow('only an erasure may delete')
		expect(rowsIn(of.folder())).toEqual(before)
	})

	test('of nobody may not', () => {
		stranger(of.folder(), (sqlite) =>
			sqlite.exec("INSERT INTO sealed_text VALUES ('of nobody', NULL, zeroblob(16), '{}')"),
		)
		expect(() => deleteOf('client_id IS NULL')).toThrow('only an erasure may delete')
	})
})
