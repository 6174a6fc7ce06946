import { describe, expect, test } from 'vitest'
import { eraseClient } from '@/db/clients/erase'
import { verify } from '@/db/record/verify'
import { must } from '@/demo/play/must'
import { agreementsOf } from '../agreements/steps'
import { rowsIn } from '../stage/rows'
import { stranger, studio } from '../stage/studio'

const of = studio()
const { begun, issue, issued } = agreementsOf(of)
const erase = async () =>
	must('erase', await eraseClient(await of.as('designer'), of.cast().clients.vet.id, of.stamp()))
const ask = (sql: string, ...values: string[]) =>
	stranger(of.folder(), (sqlite) =>
		sqlite
			.prepare<string[], unknown[]>(sql)
			.raw()
			.all(...values),
	)

describe('an erased client’s agreements', () => {
	test('one that nobody ever saw is gone, and others’ stay', async () => {
		const [theirs, others] = [await begun('vet'), await begun('bakery')]
		await erase()
		expect(ask('SELECT id FROM agreement')).toEqual([[others]])
		expect(JSON.stringify(rowsIn(of.folder()).agreement_draft)).not.toContain(theirs)
	})

	test('one that is out is taken back with a line, its words and drafts gone, and the record holds', async () => {
		const { agreement } = await issued('vet')
		await erase()
		expect(ask('SELECT state FROM agreement')).toEqual([['ended']])
		expect(ask('SELECT act FROM event WHERE object = ? ORDER BY seq DESC LIMIT 1', `agreement ${agreement}`)).toEqual([
			['agreement taken back'],
		])
		expect(JSON.stringify(rowsIn(of.folder()).agreement_draft)).not.toContain('Maine')
		expect(ask('SELECT body FROM sealed_text WHERE client_id = ?', of.cast().clients.vet.id)).toEqual([])
		expect(await verify(await of.as('designer'))).toMatchObject({ broken: null })
	})

	test('mails about them go unsent', async () => {
		await issued('vet')
		await erase()
		expect(ask("SELECT dropped_at IS NOT NULL FROM outbox WHERE message = 'agreement issued'")).toEqual([[1], [1]])
	})

	test('nothing more is issued', async () => {
		const { agreement } = await issued('vet')
		await erase()
		expect(await issue(agreement)).toEqual({ ok: false, why: 'hidden' })
	})
})
