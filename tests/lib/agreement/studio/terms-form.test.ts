import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import type { AgreedSeason } from '@/lib/agreement/season'
import { termsLists } from '@/lib/agreement/studio/form/parts'
import { termsForm } from '@/lib/agreement/studio/form/terms-form'
import { termsText } from '@/lib/agreement/studio/form/terms-text'
import type { Terms } from '@/lib/agreement/terms'
import { read, type Typed, typed } from '@/lib/forms/read'
import { cents } from '@/lib/units/cents'
import { day } from '@/lib/units/day'
import { visitKinds } from '@/lib/visit/visit'
import { agreementId, quarterly, terms as sample } from '../sample'

const named = { once: agreementId, agreement: agreementId, version: '3' }
const inOrder = (season: AgreedSeason): AgreedSeason => ({
	...season,
	visits: season.visits.toSorted((a, b) => visitKinds.indexOf(a.kind) - visitKinds.indexOf(b.kind)),
})
const terms: Terms = { ...sample, seasons: sample.seasons.map(inOrder) }
const sent = (change: Typed = {}, of: Terms = terms): Typed => ({ ...termsText(of), ...named, ...change })
const plan = (of: Terms['plan']): Terms => ({ ...terms, plan: of })

describe('the terms as text', () => {
	test.each<[string, Terms]>([
		['a year with fixed and quoted seasons', terms],
		['paid with its visits', plan({ is: 'per visit' })],
		['monthly from a signature', plan({ ...quarterly, months: 1, count: 12, start: { is: 'on approval' } })],
		[
			'every five months from the first of a month',
			plan({ ...quarterly, months: 5, start: { is: 'first of the month', from: day('2027-01-15') } }),
		],
		[
			'on dates of its own',
			plan({
				is: 'own dates',
				parts: [
					{ weight: 5000, due: { is: 'on approval', monthsLater: 0 } },
					{ weight: 3025, due: { is: 'on', day: day('2027-03-01') } },
					{
						weight: 1975,
						due: { is: 'at visit', season: { quarter: 'spring', year: 2027 }, visit: 'install', number: 1 },
					},
				],
			}),
		],
		['with nothing said yet', { ...terms, from: null, to: null, seasons: [], plan: null, without: ['lights'] }],
	])('%s comes back as it was', (_, of) => {
		expect(read(termsForm, sent({}, of))).toEqual({
			ok: true,
			value: { once: agreementId, agreement: agreementId, version: 3, terms: of },
		})
	})

	test('as a page sends it, with a list of ticks for every row that there could be', () => {
		const form = new FormData()
		for (const [name, value] of Object.entries(sent())) for (const each of [value].flat()) form.append(name, each)
		form.delete('season.2.container')
		const filled = read(termsForm, typed(form, termsLists))
		expect(filled.ok && filled.value.terms.seasons.map(({ containers }) => containers.length)).toEqual([2, 1, 0])
	})

	test('any price to the cent comes back as it was', () => {
		fc.assert(
			fc.property(fc.integer({ min: 0, max: 10_000_000 }), (amount) => {
				const [first, ...rest] = terms.seasons
				const priced = first && { ...first, price: { is: 'fixed' as const, cents: cents(amount) } }
				const of = { ...terms, seasons: [...(priced === undefined ? [] : [priced]), ...rest] }
				const filled = read(termsForm, sent({}, of))
				expect(filled.ok && filled.value.terms.seasons[0]?.price).toEqual({ is: 'fixed', cents: amount })
			}),
		)
	})

	test('a season whose box says none goes, whatever else it holds', () => {
		const filled = read(termsForm, sent({ 'season.1.quarter': '', 'season.1.price': 'nonsense' }))
		expect(filled.ok && filled.value.terms.seasons.map(({ quarter }) => quarter)).toEqual(['winter', 'summer'])
	})
})

describe('is refused with a sentence at its box', () => {
	const long = 'a'.repeat(10_000)
	test.each<[string, Typed, string]>([
		['a negative price', { 'season.0.price': '-12.00' }, 'season.0.price'],
		['a fixed season without a price', { 'season.0.price': '' }, 'season.0.price'],
		['a price of three decimals', { 'season.0.price': '12.505' }, 'season.0.price'],
		['a year of another century', { 'season.0.year': '1926' }, 'season.0.year'],
		['a container that is no id', { 'season.0.container': ['all'] }, 'season.0.container.0'],
		['sixty-one visits', { 'season.0.check': '61' }, 'season.0.check'],
		['a visit less than none', { 'season.0.check': '-1' }, 'season.0.check'],
		['a plan of no instalments', { plan: 'monthly', planCount: '0' }, 'planCount'],
		['a plan of forty', { plan: 'monthly', planCount: '40' }, 'planCount'],
		['every no months', { plan: 'months', planMonths: '0' }, 'planMonths'],
		['a plan without its first day', { plan: 'monthly', planStart: 'on', planDay: '' }, 'planDay'],
		['own dates without one', { plan: 'own' }, 'part.0.share'],
		['a share of nothing', { plan: 'own', 'part.0.share': '0', ...due('signing') }, 'part.0.share'],
		['a share that is never due', { plan: 'own', 'part.0.share': '50', ...due('day') }, 'part.0.day'],
		['a visit that is none', { plan: 'own', 'part.0.share': '50', ...due('winter 2026 party 1') }, 'part.0.due'],
		['dates reversed', { from: '2027-12-01' }, 'to'],
		['the 31st of February', { to: '2027-02-31' }, 'to'],
		['a law of ten thousand characters', { law: long }, 'law'],
		['words of two lines', { sold: 'plants\nand pots' }, 'sold'],
		['control characters', { lent: 'lights\u0007' }, 'lent'],
		['words that turn about', { law: 'Maine\u202e' }, 'law'],
		['a notice of years', { noticeDays: '900' }, 'noticeDays'],
		['a clause that is no key', { without: ['Not a key!'] }, 'without.0'],
	])('%s', (_, change, at) => {
		const filled = read(termsForm, sent(change))
		expect(filled).toMatchObject({ ok: false, errors: { [at]: expect.stringMatching(/./) } })
		expect(Object.keys(filled.ok ? {} : filled.errors)).toEqual([at])
	})

	test('a box that is none of the form, and a row beyond the last', () => {
		expect(read(termsForm, sent({ costs: '1' })).ok).toBe(false)
		expect(read(termsForm, sent({ 'season.12.quarter': 'winter' })).ok).toBe(false)
		expect(read(termsForm, sent({ 'season.0.cost': '1' })).ok).toBe(false)
	})
})

function due(is: string): Typed {
	return { 'part.0.due': is, 'part.0.day': '', 'part.0.months': '' }
}
