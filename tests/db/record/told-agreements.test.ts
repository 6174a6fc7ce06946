import { describe, expect, test } from 'vitest'
import { saveTemplate } from '@/db/agreements/template'
import { write } from '@/db/open'
import { append } from '@/db/record/append'
import { verify } from '@/db/record/verify'
import { must } from '@/demo/play/must'
import { defaultTemplate } from '@/lib/agreement/template/default-template'
import { agreementsOf } from '../agreements/steps'
import { found, stranger, studio } from '../stage/studio'

const of = studio()
const { issued } = agreementsOf(of)
const broken = async () => found(await verify(await of.as('designer'))).broken
const otherwise = 'the evidence says otherwise'

/** Somebody who owns the file takes the guards away first. */
const damage = (sql: string) =>
	stranger(of.folder(), (sqlite) => {
		for (const table of ['agreement_template', 'agreement_document', 'agreement_signature'])
			for (const kind of ['no_update', 'no_delete']) sqlite.exec(`DROP TRIGGER ${table}_${kind}`)
		sqlite.pragma('foreign_keys = off')
		sqlite.exec(sql)
	})
const lineOf = (act: string) =>
	stranger(of.folder(), (sqlite) => sqlite.prepare('SELECT max(seq) FROM event WHERE act = ?').pluck().get(act))
const changeClauses = async () =>
	must(
		'template',
		await saveTemplate(await of.as('designer'), { version: 1, clauses: defaultTemplate.clauses.slice(1) }, of.stamp()),
	)

describe('what lines tell of agreements', () => {
	test('is whole', async () => {
		await changeClauses()
		await issued('vet')
		expect(await broken()).toBeNull()
	})

	test.each([
		['a document', 'DELETE FROM agreement_document'],
		['what a document comes to in number', 'UPDATE agreement_document SET number = 2, supersedes = hash'],
		['the studio’s signature', 'DELETE FROM agreement_signature'],
		['who signed', "UPDATE agreement_signature SET by = 'somebody'"],
		['what was signed with', "UPDATE agreement_signature SET words = 'f'"],
	])('%s, gone or altered, is found by its line', async (what, sql) => {
		await issued('vet')
		damage(sql)
		const left =
			what === 'who signed' ? { seq: null, why: expect.stringMatching(/^No line tells of the studio’s/) } : null
		expect(await broken()).toEqual(left ?? { seq: lineOf('agreement issued'), why: otherwise })
	})

	test.each([
		['a clause', `UPDATE agreement_template SET document = replace(document, 'containers', 'pots')`],
		['a version', 'DELETE FROM agreement_template'],
	])('%s of the template, altered or gone, is found by its line', async (_, sql) => {
		await changeClauses()
		damage(sql)
		expect(await broken()).toEqual({ seq: lineOf('agreement template changed'), why: otherwise })
	})
})

describe('what no line tells of', () => {
	const like = (table: string, anew: string) =>
		stranger(of.folder(), (sqlite) => sqlite.exec(`INSERT INTO ${table} ${anew}`))

	test('a document', async () => {
		const { agreement } = await issued('vet')
		like(
			'agreement_document',
			`SELECT 'forged', agreement_id, 2, hash, template_version, from_day, to_day, total_cents, issued_at, issued_by FROM agreement_document`,
		)
		expect(await broken()).toEqual({ seq: null, why: `No line tells of issue 2 of agreement ${agreement}.` })
	})

	test('a client’s signature', async () => {
		const { agreement } = await issued('vet')
		like('agreement_signature', `SELECT 'forged', document, 'client', words, by, at FROM agreement_signature`)
		const why = `No line tells of the client’s signature to issue 1 of agreement ${agreement}.`
		expect(await broken()).toEqual({ seq: null, why })
	})

	test('a version of the template', async () => {
		const { designer } = of.cast().people
		like('agreement_template', `VALUES (2, '{}', '${of.cast().now}', '${designer.id}')`)
		expect(await broken()).toEqual({ seq: null, why: 'No line tells of the agreement template 2.' })
	})
})

test('a line that tells of a signature which nobody gave is named', async () => {
	const { agreement, hash } = await issued('vet')
	const line = { act: 'agreement signed', object: `agreement ${agreement}`, client: of.cast().clients.vet.id } as const
	const designer = await of.as('designer')
	write((tx) => append(tx, of.stamp(), designer, { ...line, facts: { number: 1, document: hash } }))
	expect(await broken()).toEqual({ seq: lineOf('agreement signed'), why: otherwise })
})
