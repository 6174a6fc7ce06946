import { describe, expect, test } from 'vitest'
import { beginAgreement, saveTerms } from '@/db/agreements/draft'
import { eraseClient } from '@/db/clients/erase'
import { emptyTerms } from '@/lib/agreement/terms'
import { id } from '@/lib/units/id'
import { changesOf, refused } from '../stage/rows'
import { fillDisk, studio } from '../stage/studio'
import { agreementsOf } from './steps'

const of = studio()
const { begun, issue, termsFor } = agreementsOf(of)
const hidden = { ok: false, why: 'hidden' }

describe('beginning an agreement', () => {
	test('keeps it, its draft and a line', async () => {
		const beginning = { client: of.cast().clients.vet.id }
		const { said, did } = await changesOf(of.folder(), async () =>
			beginAgreement(await of.as('designer'), beginning, of.stamp()),
		)
		expect([said.ok, did]).toEqual([true, { agreement: '+1', agreement_draft: '+1', event: '+1' }])
	})

	test('not of somebody who is no client, nor of one who was erased', async () => {
		const designer = await of.as('designer')
		const nobody = id<'client'>('01999999-0000-7000-8000-00000000000a')
		await eraseClient(designer, of.cast().clients.vet.id, of.stamp())
		const said = await refused(of.folder(), async () => [
			await beginAgreement(designer, { client: nobody }, of.stamp()),
			await beginAgreement(designer, { client: of.cast().clients.vet.id }, of.stamp()),
		])
		expect(said).toEqual([hidden, hidden])
	})

	test('one renews another once', async () => {
		const last = await begun('vet')
		await begun('vet', undefined, last)
		await expect(begun('vet', undefined, last)).rejects.toThrow('agreement.renews')
	})
})

describe('saving its terms', () => {
	const saving = async (agreement: Awaited<ReturnType<typeof begun>>, version: number, terms = emptyTerms) =>
		saveTerms(await of.as('designer'), { agreement, version, terms }, of.stamp())

	test('over the version that was read, and over no other', async () => {
		const agreement = await begun('vet')
		const { said, did } = await changesOf(of.folder(), () => saving(agreement, 1))
		expect([said, did]).toEqual([{ ok: true, version: 2 }, { agreement_draft: '~1' }])
		expect(await refused(of.folder(), () => saving(agreement, 1))).toEqual({ ok: false, why: 'saved elsewhere' })
	})

	test('leaves what was issued as it is', async () => {
		const agreement = await begun('vet')
		await issue(agreement)
		const { did } = await changesOf(of.folder(), async () => saving(agreement, 1, await termsFor('bakery')))
		expect(did).toEqual({ agreement_draft: '~1' })
	})

	test('leaves nothing when the disk is full', async () => {
		const agreement = await begun('vet')
		fillDisk(of.folder(), 'agreement_draft', 'UPDATE')
		await refused(of.folder(), () => expect(saving(agreement, 1)).rejects.toThrow('the disk is full'))
	})
})
