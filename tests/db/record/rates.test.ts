import type Database from 'better-sqlite3'
import { describe, expect, test } from 'vitest'
import { write } from '@/db/open'
import { append } from '@/db/record/append'
import { verify } from '@/db/record/verify'
import { keepRates } from '@/db/studio/rates'
import { defaultRates } from '@/lib/pricing/rates'
import { canonical } from '@/lib/record/canonical'
import { sha256 } from '@/lib/record/hash'
import { found, stranger, studio } from '../stage/studio'

const of = studio()
const broken = async () => found(await verify(await of.as('designer'))).broken

const raise = async () => {
	const designer = await of.as('designer')
	write((tx) => keepRates(tx, of.stamp(), designer, { ...defaultRates, billedCentsPerHour: 6600 }))
}
/** Somebody who owns the file takes the guards away first. */
const damage = (sql: string) =>
	stranger(of.folder(), (sqlite: Database.Database) => {
		for (const kind of ['no_update', 'no_delete']) sqlite.exec(`DROP TRIGGER rates_${kind}`)
		sqlite.pragma('foreign_keys = off')
		sqlite.exec(sql)
	})
const lineOf = (version: number) =>
	stranger(of.folder(), (sqlite) =>
		sqlite
			.prepare<[string], { seq: number; facts: string }>('SELECT seq, facts FROM event WHERE object = ?')
			.get(`rates ${version}`),
	)

describe('rates', () => {
	test('are told of with the hash of all that they say, the first ones too', async () => {
		await raise()
		const hashOf = (cents: number) => sha256(canonical({ ...defaultRates, billedCentsPerHour: cents }))
		expect([1, 2].map((version) => found(lineOf(version)).facts)).toEqual([
			`{"document":"${hashOf(defaultRates.billedCentsPerHour)}","version":1}`,
			`{"document":"${hashOf(6600)}","version":2}`,
		])
		expect(await broken()).toBeNull()
	})

	test.each([
		['altered from 66.00 an hour to 90.00', `UPDATE rates SET document = replace(document, '6600', '9000')`],
		['of another day', `UPDATE rates SET made_at = '2026-01-01T00:00:00.000Z' WHERE version = 2`],
		['of another hand', `UPDATE rates SET made_by = NULL WHERE version = 2`],
		['taken away', `DELETE FROM rates WHERE version = 2`],
	])('%s are not those that their line tells of', async (_, sql) => {
		await raise()
		damage(sql)
		expect(await broken()).toEqual({ seq: found(lineOf(2)).seq, why: 'the evidence says otherwise' })
	})

	test('that no line tells of were put in', async () => {
		damage(`INSERT INTO rates SELECT 2, document, made_at, made_by FROM rates`)
		expect(await broken()).toEqual({ seq: null, why: 'No line tells of the rates 2.' })
	})

	// Lines that were written before they had facts: the chain keeps them as they are.
	test('of an older line, which says nothing of them, may stand', async () => {
		const designer = await of.as('designer')
		damage(`INSERT INTO rates SELECT 2, document, '${of.cast().now}', '${of.cast().people.designer.id}' FROM rates`)
		write((tx) => append(tx, of.stamp(), designer, { act: 'rates changed', object: 'rates 2', client: null }))
		expect(await broken()).toBeNull()
	})
})
