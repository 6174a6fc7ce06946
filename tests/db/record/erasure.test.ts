import { describe, expect, test } from 'vitest'
import { eraseClient } from '@/db/clients/erase'
import { write } from '@/db/open'
import { append } from '@/db/record/append'
import { verify } from '@/db/record/verify'
import { must } from '@/demo/play/must'
import { found, later, stranger, studio } from '../stage/studio'

const of = studio()
const whole = async () => found(await verify(await of.as('designer')))
const vet = () => of.cast().clients.vet.id

/** With every guard in its place. */
const forge = () =>
	stranger(of.folder(), (sqlite) =>
		sqlite
			.prepare("INSERT INTO erasure VALUES ('forged', ?, ?, ?)")
			.run(vet(), of.cast().now, of.cast().people.designer.id),
	)
const deleteWords = () =>
	stranger(of.folder(), (sqlite) => sqlite.prepare('DELETE FROM sealed_text WHERE client_id = ?').run(vet()).changes)

describe('an erasure that no line of the record tells of', () => {
	test('lets no words go', () => {
		forge()
		expect(deleteWords).toThrow('sealed_text: only an erasure may delete')
	})

	test('is found, even when nothing went', async () => {
		forge()
		expect((await whole()).broken).toEqual({ seq: null, why: `No line tells of the erasure of ${vet()}.` })
	})

	test.each([
		['of another client', () => of.cast().clients.inn.id, () => of.cast().now],
		['at another moment', vet, () => of.stamp(of.cast().now).at.replace('16:00', '15:59')],
	])('lets no words go for a line %s', async (_, client, at) => {
		const designer = await of.as('designer')
		write((tx) =>
			append(tx, of.stamp(), designer, { act: 'client erased', object: `client ${client()}`, client: client() }),
		)
		stranger(of.folder(), (sqlite) =>
			sqlite.prepare("INSERT INTO erasure VALUES ('forged', ?, ?, ?)").run(vet(), at(), of.cast().people.designer.id),
		)
		expect(deleteWords).toThrow('sealed_text: only an erasure may delete')
	})
})

describe('a line that tells of an erasure', () => {
	test('without one is named', async () => {
		const designer = await of.as('designer')
		write((tx) => append(tx, of.stamp(), designer, { act: 'client erased', object: `client ${vet()}`, client: vet() }))
		const { broken, lines } = await whole()
		expect(broken).toEqual({ seq: lines, why: 'the evidence says otherwise' })
	})
})

describe('an erasure of the law', () => {
	test('is whole, and the words of each revision are counted among what is gone, both sides as one', async () => {
		const { revisions, lines } = stranger(of.folder(), (sqlite) => {
			const count = (sql: string) => Number(sqlite.prepare(sql).pluck().get(of.cast().clients.creditUnion.id))
			return {
				revisions: count(
					'SELECT count(*) FROM revision JOIN proposal ON proposal.id = proposal_id WHERE client_id = ?',
				),
				lines: count('SELECT count(*) FROM event WHERE sealed IS NOT NULL AND client_id = ?'),
			}
		})
		expect(revisions).toBeGreaterThan(0)
		must('erase', await eraseClient(await of.as('designer'), of.cast().clients.creditUnion.id, of.stamp()))
		expect(await whole()).toMatchObject({ broken: null, erased: revisions + lines })
	})

	test('can be done again, and the words stay as they were counted', async () => {
		must('erase', await eraseClient(await of.as('designer'), vet(), of.stamp()))
		const { erased } = await whole()
		const again = of.stamp(later(of.cast().now, 1000))
		must('again', await eraseClient(await of.as('designer'), vet(), again))
		expect(await whole()).toMatchObject({ broken: null, erased })
	})
})
