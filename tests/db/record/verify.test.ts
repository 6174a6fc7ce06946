import type Database from 'better-sqlite3'
import { describe, expect, test } from 'vitest'
import { eraseClient } from '@/db/clients/erase'
import { approve } from '@/db/proposals/answers/approve'
import { readOffer } from '@/db/proposals/read-offer'
import { verify } from '@/db/record/verify'
import { must } from '@/demo/play/must'
import type { Json } from '@/lib/record/canonical'
import { canonical } from '@/lib/record/canonical'
import { entryHash } from '@/lib/record/chain'
import { hash, hashOf } from '@/lib/record/hash'
import { found, stranger, studio, utc } from '../stage/studio'

const of = studio()
const whole = async () => found(await verify(await of.as('designer')))

/** Somebody who owns the file takes the guards away first. */
const damage = (act: (sqlite: Database.Database) => unknown) =>
	stranger(of.folder(), (sqlite) => {
		const guards = sqlite.prepare<[], string>("SELECT name FROM sqlite_master WHERE type = 'trigger'").pluck().all()
		for (const guard of guards) sqlite.exec(`DROP TRIGGER "${guard}"`)
		sqlite.pragma('foreign_keys = off')
		act(sqlite)
	})
const run = (sql: string) => damage((sqlite) => sqlite.exec(sql))
const ask = (sql: string) =>
	stranger(of.folder(), (sqlite) => found(sqlite.prepare<[], string | number>(sql).pluck().get()))

describe('a whole record', () => {
	test('is counted, with its head', async () => {
		expect(await whole()).toEqual({
			lines: ask('SELECT count(*) FROM event'),
			head: ask('SELECT hash FROM event ORDER BY seq DESC LIMIT 1'),
			broken: null,
			erased: 0,
		})
	})

	test('of nothing has no head', async () => {
		run('DELETE FROM event; DELETE FROM answer; DELETE FROM revision; DELETE FROM rates; DELETE FROM sealed_text')
		expect(await whole()).toEqual({ lines: 0, head: null, broken: null, erased: 0 })
	})

	test('is for the designer and the machinery alone', async () => {
		for (const who of ['helper', 'bakeryApprover', 'bakeryViewer', 'nobody'] as const)
			expect(await verify(await of.as(who))).toBeUndefined()
		expect(await verify(await of.as('system'))).toEqual(await whole())
	})
})

const published = () => Number(ask("SELECT min(seq) FROM event WHERE act = 'proposal published'"))
const altered = (column: string, value: string) => async () => {
	const seq = published()
	run(`UPDATE event SET ${column} = ${value} WHERE seq = ${seq}`)
	expect((await whole()).broken).toEqual({ seq, why: 'altered' })
}

describe('a line of the record that was altered is named', () => {
	test.each([
		['its facts', 'facts', `'{"number":2}'`],
		['its facts, which are none any more', 'facts', "'number 2'"],
		['its facts, to a list', 'facts', "'[]'"],
		[
			'its facts, said twice over: the first reading is another than the last',
			'facts',
			`'{"number":7,' || substr(facts, 2)`,
		],
		['the space between its facts', 'facts', "replace(facts, ',', ', ')"],
		['half of a letter in its facts', 'facts', `'{"number":"\\ud83c"}'`],
		['its time', 'at', "'2026-10-05T00:00:00.000Z'"],
		['who did it', 'actor', "'system'"],
		['what was done', 'act', "'proposal withdrawn'"],
		['to what', 'object', "'proposal 2'"],
		['whose it is', 'client_id', 'NULL'],
		['which words belong to it', 'sealed', 'hash'],
		['its own hash', 'hash', 'substr(hash, 2) || substr(hash, 1, 1)'],
		['the line before it', 'prev', 'substr(prev, 2) || substr(prev, 1, 1)'],
	])('%s', (_, column, value) => altered(column, value)())
})

describe('a line that was moved, taken away or put in is named', () => {
	test('two lines in each other’s place', async () => {
		run(
			'UPDATE event SET seq = -1 WHERE seq = 50; UPDATE event SET seq = 50 WHERE seq = 51; UPDATE event SET seq = 51 WHERE seq = -1',
		)
		expect((await whole()).broken).toEqual({ seq: 50, why: 'altered' })
	})

	test.each([1, 77, 200])('line %i taken away', async (seq) => {
		run(`DELETE FROM event WHERE seq = ${seq}`)
		expect((await whole()).broken).toEqual({ seq, why: 'missing' })
	})

	test('line 77 taken away, and those after it moved up', async () => {
		run(
			'DELETE FROM event WHERE seq = 77; UPDATE event SET seq = -seq WHERE seq > 77; UPDATE event SET seq = -seq - 1 WHERE seq < 0',
		)
		expect((await whole()).broken).toEqual({ seq: 77, why: 'altered' })
	})

	test('a line before the first', async () => {
		run(
			"INSERT INTO event SELECT 0, 'h', 'p', at, actor, act, object, client_id, facts, sealed FROM event WHERE seq = 1",
		)
		expect((await whole()).broken).toEqual({ seq: 0, why: 'out of place' })
	})

	test('a line written anew with a hash of its own: the next one does not follow', async () => {
		damage((sqlite) => {
			const row = found(
				sqlite
					.prepare<[], { at: string; actor: string; act: string; object: string; client: string; prev: string }>(
						'SELECT at, actor, act, object, client_id AS client, prev FROM event WHERE seq = 120',
					)
					.get(),
			)
			const { at, prev, ...rest } = row
			const anew = entryHash({
				seq: 120,
				...rest,
				at: utc(at.slice(0, -1)),
				facts: { may: 'sign' },
				sealed: null,
				prev: hash(prev),
			})
			sqlite.prepare('UPDATE event SET facts = ?, hash = ? WHERE seq = 120').run(canonical({ may: 'sign' }), anew)
		})
		expect((await whole()).broken).toEqual({ seq: 121, why: 'not chained' })
	})

	test('a tail that was cut off shows by the head that was kept elsewhere, and by the evidence that it told of', async () => {
		const { head } = await whole()
		const seq = Number(
			ask(
				"SELECT max(seq) FROM event WHERE act NOT IN ('proposal published', 'proposal approved', 'change asked for', 'season skipped')",
			),
		)
		run(`DELETE FROM event WHERE seq >= ${seq}`)
		expect((await whole()).head).not.toBe(head)
	})
})

describe('words', () => {
	const one = (sql: string) => hash(String(ask(sql)))
	const offer = () => one('SELECT offer_hash FROM revision ORDER BY published_at LIMIT 1')

	test.each([
		['a letter', "UPDATE sealed_text SET body = replace(body, 'season', 'Season') WHERE hash = "],
		['the salt', 'UPDATE sealed_text SET salt = randomblob(16) WHERE hash = '],
	])('altered by %s are named by their hash', async (_, sql) => {
		const words = offer()
		run(`${sql}'${words}'`)
		expect((await whole()).broken).toEqual({ seq: null, why: `The words under ${words} were altered.` })
	})

	test('of an answer, gone without an erasure, are named by its line', async () => {
		const seq = Number(ask("SELECT seq FROM event WHERE act = 'season skipped' LIMIT 1"))
		run(`DELETE FROM sealed_text WHERE hash = (SELECT sealed FROM event WHERE seq = ${seq})`)
		expect((await whole()).broken).toEqual({ seq: null, why: `The words of line ${seq} are gone without an erasure.` })
	})

	test.each(['offer_hash', 'costing_hash'])('of a revision, gone without an erasure: %s', async (column) => {
		run(
			`DELETE FROM sealed_text WHERE hash = (SELECT ${column} FROM revision WHERE proposal_id = '${of.cast().proposals.vet}')`,
		)
		const why = `The words of revision 1 of ${of.cast().proposals.vet} are gone without an erasure.`
		expect((await whole()).broken).toEqual({ seq: null, why })
	})

	test('of one client, gone by the erasure of another', async () => {
		const { vet, dental } = of.cast().clients
		await eraseClient(await of.as('designer'), dental.id, of.stamp())
		run(`DELETE FROM sealed_text WHERE client_id = '${vet.id}'`)
		expect((await whole()).broken).toMatchObject({ seq: null, why: expect.stringContaining('gone without an erasure') })
	})

	// Two answers, and two revisions: one of autumn, one of winter.
	test('that were erased are counted by their lines and revisions', async () => {
		await eraseClient(await of.as('designer'), of.cast().clients.skipped.id, of.stamp())
		expect(await whole()).toMatchObject({ broken: null, erased: 4 })
	})
})

describe('a revision', () => {
	const vet = () => of.cast().proposals.vet
	const row = () => `WHERE proposal_id = '${vet()}'`

	test.each([
		['its number', 'number = 4', 4],
		['what it offers', 'offer_hash = substr(offer_hash, 2) || substr(offer_hash, 1, 1)', 1],
		['what it costs', 'costing_hash = substr(costing_hash, 2) || substr(costing_hash, 1, 1)', 1],
		['its rates', 'rates_version = 2', 1],
		['the day to answer by', "answer_by = '2027-01-31'", 1],
		['its hash', 'hash = substr(hash, 2) || substr(hash, 1, 1)', 1],
	])('altered in %s gives another hash', async (_, set, number) => {
		run(`UPDATE revision SET ${set} ${row()}`)
		expect((await whole()).broken).toEqual({ seq: null, why: `Revision ${number} of ${vet()} does not give its hash.` })
	})

	test('of another proposal gives another hash', async () => {
		const { bookshop } = of.cast().proposals
		run(`UPDATE revision SET proposal_id = '${bookshop}' ${row()}`)
		expect((await whole()).broken).toEqual({ seq: null, why: `Revision 1 of ${bookshop} does not give its hash.` })
	})

	const line = () =>
		Number(ask(`SELECT seq FROM event WHERE act = 'proposal published' AND object = 'proposal ${vet()}'`))

	test('altered and hashed anew is not the one that its line tells of', async () => {
		damage((sqlite) => {
			const of_ = 'SELECT offer_hash AS offer, costing_hash AS costing, rates_version AS rates FROM revision'
			const kept = found(sqlite.prepare<[], { [key: string]: Json }>(`${of_} ${row()}`).get())
			const anew = hashOf({ v: 1, proposal: vet(), number: 1, ...kept, answerBy: '2027-01-31' })
			sqlite.exec(`UPDATE revision SET answer_by = '2027-01-31', hash = '${anew}' ${row()}`)
			sqlite.exec(`UPDATE proposal SET revision_hash = '${anew}' WHERE id = '${vet()}'`)
		})
		expect((await whole()).broken).toEqual({ seq: line(), why: 'the evidence says otherwise' })
	})

	test('taken away is missed by its line', async () => {
		run(`DELETE FROM revision ${row()}`)
		expect((await whole()).broken).toEqual({ seq: line(), why: 'the evidence says otherwise' })
	})

	test.each([
		['published_at', "'2026-01-01T00:00:00.000Z'"],
		['published_by', `(SELECT by FROM answer LIMIT 1)`],
	])('with another %s than its line has', async (column, value) => {
		run(`UPDATE revision SET ${column} = ${value} ${row()}`)
		expect((await whole()).broken).toEqual({ seq: line(), why: 'the evidence says otherwise' })
	})
})

describe('an answer', () => {
	const union = () => of.cast().proposals.creditUnion
	const line = () =>
		Number(ask(`SELECT seq FROM event WHERE act = 'proposal approved' AND object = 'proposal ${union()}'`))
	const row = () => `WHERE revision_id = (SELECT id FROM revision WHERE proposal_id = '${union()}')`

	test.each([
		['its reference', "reference = '2026-9999'"],
		[
			'to which revision',
			`revision_id = (SELECT id FROM revision WHERE id NOT IN (SELECT revision_id FROM answer) LIMIT 1)`,
		],
		['to which hash', 'revision_hash = substr(revision_hash, 2) || substr(revision_hash, 1, 1)'],
		['its kind', "kind = 'skip', option = NULL, total_cents = NULL"],
		['the palette', "option = 'b'"],
		['the palette of a place', `places = '{"a place":"b"}'`],
		['the palettes of places, which are no text of ours', `places = '{ }'`],
		['the extras', `extras = '["refresh"]'`],
		['the extras, which are no list any more', "extras = 'refresh'"],
		['what is left out', `left_out = '["a pot"]'`],
		['the total', 'total_cents = total_cents - 1'],
		['its words', 'words_hash = substr(words_hash, 2) || substr(words_hash, 1, 1)'],
		['who gave it', 'by = (SELECT published_by FROM revision LIMIT 1)'],
		['when', "at = '2026-01-01T00:00:00.000Z'"],
	])('altered in %s is not the one that its line tells of', async (_, set) => {
		const [seq, where] = [line(), row()]
		run(`UPDATE answer SET ${set} ${where}`)
		expect((await whole()).broken).toEqual({ seq, why: 'the evidence says otherwise' })
	})

	test.each([
		['taken away', "'{}'"],
		['another palette', "replace(places, 'b', 'c')"],
		['written in another way', "replace(places, ':', ': ')"],
	])('where a place took another palette: %s', async (_, places) => {
		const { fieldstone } = of.cast().proposals
		const contact = await of.as('fieldstoneApprover')
		const { hash: revision } = found(await readOffer(contact, fieldstone, of.stamp()))
		const wanted = { option: 'a', places: { [of.cast().places.fieldstoneBoathouse]: 'b' }, extras: [], leftOut: [] }
		const answering = { proposal: fieldstone, revision, once: of.once(), browser: '', purchaseOrder: '' }
		must('fieldstone', await approve(contact, { ...answering, ...wanted }, of.stamp()))
		expect((await whole()).broken).toBeNull()
		const seq = Number(ask('SELECT max(seq) FROM event'))
		run(`UPDATE answer SET places = ${places} WHERE revision_hash = '${revision}'`)
		expect((await whole()).broken).toEqual({ seq, why: 'the evidence says otherwise' })
	})

	test('taken away is missed by its line', async () => {
		const [seq, where] = [line(), row()]
		run(`DELETE FROM answer ${where}`)
		expect((await whole()).broken).toEqual({ seq, why: 'the evidence says otherwise' })
	})

	test('that no line tells of was put in', async () => {
		run(`INSERT INTO answer SELECT 'new', '2026-9999', (SELECT id FROM revision WHERE proposal_id = '${of.cast().proposals.vet}'),
			revision_hash, kind, option, extras, left_out, total_cents, words_hash, by, word, at, places FROM answer ${row()}`)
		expect((await whole()).broken).toEqual({ seq: null, why: 'No line tells of the answer 2026-9999.' })
	})
})
