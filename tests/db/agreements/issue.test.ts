import { describe, expect, test } from 'vitest'
import { issueAgreement } from '@/db/agreements/issue'
import { agreementDesk } from '@/db/agreements/studio/read-desk'
import { clientPage } from '@/db/clients/read-clients'
import { endContact } from '@/db/clients/save-contact'
import { cents } from '@/lib/units/cents'
import { day } from '@/lib/units/day'
import { changesOf, refused } from '../stage/rows'
import { fillDisk, found, stranger, studio } from '../stage/studio'
import { agreementsOf } from './steps'

const of = studio()
const { begun, issue, issued, save, termsFor } = agreementsOf(of)

const mails = () =>
	stranger(of.folder(), (sqlite) =>
		sqlite
			.prepare<[], string>("SELECT person_id FROM outbox WHERE message = 'agreement issued' ORDER BY person_id")
			.pluck()
			.all(),
	)

describe('issuing an agreement', () => {
	test('freezes it, signs it for the studio and tells who may sign', async () => {
		const agreement = await begun('vet')
		const { said, did } = await changesOf(of.folder(), () => issue(agreement))
		expect(said).toMatchObject({ ok: true, number: 1 })
		expect(did).toEqual({
			...{ agreement: '~1', agreement_document: '+1', agreement_signature: '+1', sealed_text: '+2' },
			...{ event: '+1', once: '+1', outbox: '+2' },
		})
		const { twoDoors, vetApprover } = of.cast().people
		expect(mails()).toEqual([twoDoors.id, vetApprover.id].toSorted())
	})

	test('a form that is sent again issues nothing more', async () => {
		const agreement = await begun('vet')
		const issuing = { agreement, version: 1, signBy: day('2026-10-30'), once: of.once() }
		const send = async () => issueAgreement(await of.as('designer'), issuing, of.stamp())
		await send()
		expect(await refused(of.folder(), send)).toEqual({ ok: false, why: 'nothing is different' })
	})

	test('a second supersedes the first, and the first goes on to be there', async () => {
		const { agreement, hash } = await issued('vet')
		const terms = await termsFor('vet')
		const [winter, ...rest] = terms.seasons
		const dearer = { ...found(winter), price: { is: 'fixed', cents: cents(90_000) } } as const
		await save(agreement, { ...terms, seasons: [dearer, ...rest] })
		expect(await issue(agreement)).toMatchObject({ ok: true, number: 2 })
		const kept = stranger(of.folder(), (sqlite) =>
			sqlite.prepare('SELECT number, supersedes, total_cents AS total FROM agreement_document ORDER BY number').all(),
		)
		expect(kept).toEqual([
			{ number: 1, supersedes: null, total: 145_500 },
			{ number: 2, supersedes: hash, total: 151_500 },
		])
	})

	test('waits while an approved proposal asks for a season that it prices, and says which', async () => {
		const agreement = await begun('creditUnion')
		const said = await refused(of.folder(), () => issue(agreement))
		expect(said).toEqual({
			ok: false,
			why: 'not ready',
			problems: [{ at: 'seasons', says: expect.stringMatching(/^Winter 2026–27 would be billed twice/) }],
		})
		const desk = found(await agreementDesk(await of.as('designer'), agreement, of.stamp()))
		expect(desk.problems).toEqual('problems' in said && said.problems)
		const terms = await termsFor('creditUnion')
		const quoted = terms.seasons.map((season) =>
			season.quarter === 'winter' ? { ...season, price: { is: 'quoted' as const } } : season,
		)
		await save(agreement, { ...terms, seasons: quoted })
		expect(await issue(agreement)).toMatchObject({ ok: true })
	})

	test.each([
		['terms saved elsewhere', { version: 7 }, { why: 'saved elsewhere' }],
		[
			'a day to sign by that is over',
			{ signBy: day('2026-10-05') },
			{ why: 'not ready', problems: [{ at: 'signBy' }] },
		],
	])('not with %s', async (_, change, said) => {
		const agreement = await begun('vet')
		const issuing = { agreement, version: 1, signBy: day('2026-10-30'), once: of.once(), ...change }
		expect(
			await refused(of.folder(), async () => issueAgreement(await of.as('designer'), issuing, of.stamp())),
		).toMatchObject({ ok: false, ...said })
	})

	test('not with a blank left open', async () => {
		const terms = await termsFor('vet')
		const agreement = await begun('vet', { ...terms, said: { ...terms.said, law: '' } })
		expect(await refused(of.folder(), () => issue(agreement))).toMatchObject({
			problems: [{ at: 'clauses.law.law', says: '“The law that holds” leaves {law} open.' }],
		})
	})

	test('not with the containers of another client', async () => {
		const agreement = await begun('vet', await termsFor('bakery'))
		expect(await refused(of.folder(), () => issue(agreement))).toMatchObject({ ok: false, why: 'not ready' })
	})

	test('not where nobody may sign', async () => {
		const [designer, client] = [await of.as('designer'), of.cast().clients.vet.id]
		const agreement = await begun('vet')
		for (const { id: contact } of found(await clientPage(designer, client)).contacts)
			await endContact(designer, { client, contact }, of.stamp())
		expect(await refused(of.folder(), () => issue(agreement))).toMatchObject({ problems: [{ at: 'client' }] })
	})

	test.each(['event', 'outbox', 'agreement_signature'])('leaves nothing when %s takes no row', async (table) => {
		const agreement = await begun('vet')
		fillDisk(of.folder(), table)
		await refused(of.folder(), () => expect(issue(agreement)).rejects.toThrow('the disk is full'))
	})
})
