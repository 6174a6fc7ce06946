import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { blanks, blanksIn } from '@/lib/agreement/template/blanks'
import { defaultTemplate } from '@/lib/agreement/template/default-template'
import { type Filling, fill } from '@/lib/agreement/template/fill'
import { fillingOf } from '@/lib/agreement/template/filling'
import type { Template } from '@/lib/agreement/template/template'
import { emptyTerms } from '@/lib/agreement/terms'
import { facts, terms } from '../sample'

const whole = fillingOf(terms, facts)
const clause = (text: string, more = {}) => ({ key: 'only', title: 'Only', text, isOn: true, order: 1, ...more })
const template = (...clauses: Template['clauses']): Template => ({ v: 1, version: 3, clauses })

describe('blanks', () => {
	test('each once, with what is none named', () => {
		expect(blanksIn('{client} and {studio}, {client}; {Client}, {price}, {}')).toEqual({
			known: ['client', 'studio'],
			unknown: ['Client', 'price', ''],
		})
		expect(blanksIn('no blank').known).toEqual([])
	})

	test('a name that every object has is no blank', () => {
		expect(blanksIn('{constructor} {__proto__}').known).toEqual([])
	})
})

describe('the words for each blank', () => {
	test('of a whole agreement', () => {
		expect(whole).toEqual({
			studio: 'Thornapple Studio',
			client: 'Marrowby Bakery',
			start: '1 December 2026',
			end: '30 November 2027',
			places: 'Shop door, 4 Quay Lane; Yard gate, 9 Mill Row',
			containers: 'Left urn (urn, 16 in across) at Shop door; Trough (trough, 36 in by 8 in) at Yard gate',
			visits:
				'winter 2026–27, 1 install and 1 take-down; spring 2027, 2 waterings and 1 install; summer 2027, 1 install',
			prices: 'winter 2026–27, $612.50; spring 2027, $384.01; summer 2027, quoted each season',
			total: '$996.51',
			instalments:
				'$249.13 on 1 December 2026; $249.13 on 1 March 2027; $249.13 on 1 June 2027; $249.12 on 1 September 2027',
			waters: 'you',
			sold: 'plants, cut greens and branches',
			lent: 'ornaments and lights that a proposal calls lent',
			'lights down': '15 February 2027',
			notice: '30 days',
			law: 'the State of Westmere',
		})
	})

	test('of one that is hardly begun: what is not known is null', () => {
		const bare = { ...facts, client: { ...facts.client, name: '' } }
		const open = Object.entries(fillingOf(emptyTerms, bare)).filter(([, says]) => says === null)
		expect(open.map(([blank]) => blank)).toEqual([
			...['client', 'start', 'end', 'places', 'containers', 'visits', 'prices', 'waters', 'lights down', 'law'],
		])
	})

	test('a fixed price without a plan leaves the instalments open; where all is quoted there are none', () => {
		expect(fillingOf({ ...terms, plan: null }, facts).instalments).toBeNull()
		const quoted = terms.seasons.filter(({ price }) => price.is === 'quoted')
		expect(fillingOf({ ...terms, seasons: quoted, plan: null }, facts).instalments).toBe(
			'each season apart, as its proposal says',
		)
	})

	test('the studio that waters is “us”', () => {
		expect(fillingOf({ ...terms, said: { ...terms.said, waters: 'studio' } }, facts).waters).toBe('us')
	})
})

describe('filling a template', () => {
	test('the default one, whole', () => {
		const { clauses, open } = fill(defaultTemplate, whole)
		expect(open).toEqual([])
		expect(clauses).toHaveLength(defaultTemplate.clauses.length)
		expect(clauses.map(({ text }) => text).join('\n')).not.toMatch(/[{}]|null|undefined/)
	})

	test('what is open is listed by clause and stays in its braces', () => {
		const filling: Filling = { ...whole, law: null, notice: null, client: null }
		const { clauses, open } = fill(defaultTemplate, filling)
		expect(open).toEqual([
			{ clause: 'parties', title: 'Who agrees', blank: 'client' },
			{ clause: 'ending', title: 'Ending it early', blank: 'notice' },
			{ clause: 'law', title: 'The law that holds', blank: 'law' },
		])
		expect(clauses.at(-1)?.text).toContain('the law of {law}')
	})

	test('a clause that is off, or left out for this client, asks for nothing', () => {
		const filling: Filling = { ...whole, 'lights down': null, law: null }
		const off = template(clause('{law}', { isOn: false }), clause('{client}', { key: 'other', order: 2 }))
		expect(fill(off, filling)).toEqual({
			clauses: [{ key: 'other', title: 'Only', text: 'Marrowby Bakery' }],
			open: [],
		})
		expect(fill(defaultTemplate, filling, ['lights']).open.map(({ blank }) => blank)).toEqual(['law'])
	})

	test('in order of their places, whatever the order in which they are kept', () => {
		const keys = (of: Template) => fill(of, whole).clauses.map(({ key }) => key)
		expect(keys({ ...defaultTemplate, clauses: defaultTemplate.clauses.toReversed() })).toEqual(keys(defaultTemplate))
	})

	test('words that look like a blank or a pattern are filled in as they are', () => {
		const filling: Filling = { ...whole, client: '{law} $& $1 {', law: 'Westmere' }
		expect(fill(template(clause('{client}; {law}')), filling)).toEqual({
			clauses: [{ key: 'only', title: 'Only', text: '{law} $& $1 {; Westmere' }],
			open: [],
		})
	})

	test('is the text with each blank replaced, whatever surrounds it', () => {
		const between = fc.string().map((text) => text.replace(/[{}]/g, ''))
		fc.assert(
			fc.property(fc.array(fc.tuple(between, fc.constantFrom(...blanks))), between, (parts, end) => {
				const text = parts.map(([before, blank]) => `${before}{${blank}}`).join('') + end
				const says = parts.map(([before, blank]) => `${before}${whole[blank]}`).join('') + end
				expect(fill(template(clause(text)), whole).clauses[0]?.text).toBe(says)
			}),
		)
	})
})
