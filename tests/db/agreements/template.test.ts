import { describe, expect, test } from 'vitest'
import { readTemplate, saveTemplate } from '@/db/agreements/template'
import { defaultTemplate } from '@/lib/agreement/template/default-template'
import { changesOf, refused } from '../stage/rows'
import { found, studio } from '../stage/studio'
import { agreementsOf } from './steps'

const of = studio()
const { issued } = agreementsOf(of)
const [first, ...rest] = defaultTemplate.clauses
const clauses = [{ ...found(first), title: 'Between whom' }, ...rest]
const save = async (version = 1, saved = clauses) =>
	saveTemplate(await of.as('designer'), { version, clauses: saved }, of.stamp())

describe('the studio’s clauses', () => {
	test('are the house’s own until they are changed', async () => {
		expect(await readTemplate(await of.as('designer'))).toEqual(defaultTemplate)
	})

	test('each change is a version of its own, and the one before stays', async () => {
		const { said, did } = await changesOf(of.folder(), () => save())
		expect([said, did]).toEqual([
			{ ok: true, version: 2 },
			{ agreement_template: '+1', event: '+1' },
		])
		expect(await readTemplate(await of.as('designer'))).toEqual({ v: 1, version: 2, clauses })
		expect(await save(2, defaultTemplate.clauses)).toEqual({ ok: true, version: 3 })
	})

	test.each([
		['changed elsewhere', 7, clauses],
		['nothing changed', 1, defaultTemplate.clauses],
	])('%s', async (why, version, saved) => {
		expect(await refused(of.folder(), () => save(version, saved))).toEqual({ ok: false, why })
	})

	test('with a blank that nothing fills are not kept', async () => {
		const wrong = [{ ...found(first), text: 'Between {studio} and {neighbour}.' }, ...rest]
		expect(await refused(of.folder(), () => save(1, wrong))).toMatchObject({
			why: 'not ready',
			problems: [{ at: 'clauses.parties.text' }],
		})
	})

	test('change nothing of what was issued', async () => {
		await issued('vet')
		const { did } = await changesOf(of.folder(), () => save())
		expect(did).toEqual({ agreement_template: '+1', event: '+1' })
	})
})
