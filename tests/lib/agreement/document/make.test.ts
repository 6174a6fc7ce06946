import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { documentHash, documentSchema } from '@/lib/agreement/document/document'
import { makeDocument } from '@/lib/agreement/document/make'
import type { AgreementFacts } from '@/lib/agreement/facts'
import { instalmentsOf } from '@/lib/agreement/instalment/instalments'
import type { AgreedSeason } from '@/lib/agreement/season'
import { defaultTemplate } from '@/lib/agreement/template/default-template'
import { emptyTerms, type Terms, termsSchema } from '@/lib/agreement/terms'
import { canonical } from '@/lib/record/canonical'
import { sha256 } from '@/lib/record/hash'
import { cents } from '@/lib/units/cents'
import { day } from '@/lib/units/day'
import { anyPlan, containerId, facts, placeId, quarterly, spring, summer, terms, winter } from '../sample'
import { firstIssue, issued } from './issued'

const found = (its: Partial<Terms>, known: AgreementFacts = facts, template = defaultTemplate) => {
	const made = makeDocument({ ...terms, ...its }, known, template, firstIssue)
	return made.ok ? [] : made.problems.map(({ at, says }) => `${at}: ${says}`)
}

describe('a document', () => {
	const document = issued()

	test('carries what was agreed, filled, and no container that no season names', () => {
		expect(document.containers.map(({ name }) => name)).toEqual(['Left urn', 'Trough'])
		expect(document.places.map(({ id }) => id)).toEqual([placeId(1), placeId(2)])
		expect(document.totalCents).toBe(99_651)
		expect(document.instalments).toEqual(instalmentsOf(terms.seasons, quarterly))
		expect(document.clauses.find(({ key }) => key === 'parties')?.text).toContain(
			'between Thornapple Studio, called “we” here, and Marrowby Bakery',
		)
	})

	test('is read back from its own JSON, the same to the letter', () => {
		const text = canonical(document)
		const back = documentSchema.parse(JSON.parse(text))
		expect(back).toEqual(document)
		expect(documentHash(back)).toBe(sha256(text))
	})

	test('leaves out a place where nothing of it stands', () => {
		const alone = issued({ ...terms, seasons: [spring] })
		expect(alone.places.map(({ name }) => name)).toEqual(['Shop door'])
		expect(alone.containers.map(({ name }) => name)).toEqual(['Left urn'])
	})

	test('of quoted seasons alone has no plan and asks for nothing', () => {
		const quoted = issued({ ...terms, seasons: [summer], plan: null })
		expect([quoted.totalCents, quoted.instalments, quoted.plan]).toEqual([0, [], null])
	})

	test('has another hash when anything that it says is another', () => {
		const others = [
			issued({ ...terms, to: day('2027-11-29') }),
			issued({ ...terms, seasons: [winter, spring] }),
			issued({ ...terms, said: { ...terms.said, waters: 'studio' } }),
			issued(terms, { ...facts, client: { ...facts.client, name: 'Marrowby Bakery Ltd' } }),
			issued(terms, facts, { ...defaultTemplate, version: 2 }),
			issued(terms, facts, defaultTemplate, { ...firstIssue, number: 2, supersedes: documentHash(document) }),
		]
		expect(new Set([document, ...others].map(documentHash)).size).toBe(7)
	})

	test('is made of any plan that can be kept, its instalments summing to the prices', () => {
		fc.assert(
			fc.property(anyPlan, (plan) => {
				const made = makeDocument({ ...terms, seasons: [winter, spring], plan }, facts, defaultTemplate, firstIssue)
				if (made.ok) expect(made.document.instalments).toEqual(instalmentsOf([winter, spring], plan))
				else expect(made.problems.map(({ at }) => at)).toEqual(['plan'])
			}),
		)
	})
})

describe('what cannot be read back', () => {
	const document = issued()
	test.each([
		['a cost beside it', { ...document, costCents: 1 }],
		['a cent more in all', { ...document, totalCents: 99_652 }],
		['an instalment less', { ...document, instalments: document.instalments.slice(1) }],
		['an end before its start', { ...document, to: '2026-11-30' }],
		['a second issue that supersedes nothing', { ...document, number: 2 }],
		['a first issue that supersedes one', { ...document, supersedes: 'a'.repeat(64) }],
		['another version of the shape', { ...document, v: 2 }],
		['no clause', { ...document, clauses: [] }],
	])('%s', (_, other) => {
		expect(documentSchema.safeParse(other).success).toBe(false)
	})
})

describe('what stops it', () => {
	const season = (of: AgreedSeason, more: Partial<AgreedSeason>): Partial<Terms> => ({
		seasons: [...terms.seasons.filter((each) => each !== of), { ...of, ...more }],
	})
	const fixed = (amount: number) => ({ is: 'fixed', cents: cents(amount) }) as const
	const own = (...days: string[]): Terms['plan'] => ({
		is: 'own dates',
		parts: days.map((each) => ({ weight: 1, due: { is: 'on', day: day(each) } })),
	})
	test.each<[string, Partial<Terms>, RegExp[]]>([
		['nothing', {}, []],
		['dates reversed', { to: day('2026-11-30') }, [/^to: It ends before it begins/]],
		['a price below zero', season(spring, { price: fixed(-1) }), [/^seasons.spring 2027.price: .*not above zero/]],
		['a price of nothing', season(spring, { price: fixed(0) }), [/price of spring 2027 is not above zero/]],
		['a price beyond all', season(spring, { price: fixed(10_000_001) }), [/above what can be kept/]],
		['no container', season(summer, { containers: [] }), [/^seasons.summer 2027.containers: Name the containers/]],
		['a container gone', season(summer, { containers: [containerId(9)] }), [/no longer has/]],
		['a season twice', { seasons: [winter, { ...winter }, spring] }, [/^seasons.winter 2026: .* is named twice/]],
		['no plan', { plan: null }, [/^plan: Say how/, /^clauses.instalments.instalments: .*leaves \{instalments\} open/]],
		['a plan for nothing', { seasons: [summer] }, [/^plan: No season has a fixed price/]],
		['days out of order', { plan: own('2027-03-01', '2027-02-28') }, [/^plan: An instalment is due before/]],
		['a day twice, which is well', { plan: own('2027-03-01', '2027-03-01') }, []],
		[
			'paid with visits that are none',
			{ ...season(spring, { visits: [] }), plan: { is: 'per visit' } },
			[/^seasons.spring 2027.visits: .*include one at least/],
		],
		['the law left open', { said: { ...terms.said, law: '' } }, [/^clauses.law.law: “The law that holds” leaves/]],
		['no day for the lights', { said: { ...terms.said, lightsDownBy: null } }, [/leaves \{lights down\} open/]],
		['that, where there are none', { said: { ...terms.said, lightsDownBy: null }, without: ['lights'] }, []],
	])('%s', (_, its, says) => {
		const all = found(its)
		expect(all).toHaveLength(says.length)
		says.forEach((each, index) => {
			expect(all[index]).toMatch(each)
		})
	})

	test('a clause with a blank that is none', () => {
		const clauses = defaultTemplate.clauses.map((clause) =>
			clause.key === 'law' ? { ...clause, text: '{state}' } : clause,
		)
		expect(found({}, facts, { ...defaultTemplate, clauses })).toEqual([
			expect.stringMatching(/^clauses.law.text: .*\{state\} is no blank/),
		])
	})

	test('an agreement that is hardly begun can be kept, and says all that it lacks', () => {
		expect(termsSchema.parse(emptyTerms)).toEqual(emptyTerms)
		expect(found(emptyTerms).slice(0, 3)).toEqual([
			'from: Say on which day it begins.',
			'to: Say on which day it ends.',
			'seasons: Name one season at least.',
		])
	})
})
