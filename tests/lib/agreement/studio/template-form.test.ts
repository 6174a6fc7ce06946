import { describe, expect, test } from 'vitest'
import { templateForm, templateText } from '@/lib/agreement/studio/form/template-form'
import { defaultTemplate } from '@/lib/agreement/template/default-template'
import { read, type Typed } from '@/lib/forms/read'
import { agreementId } from '../sample'

const last = defaultTemplate.clauses.length
const sent = (change: Typed = {}): Typed => ({
	...{ once: agreementId, version: '3' },
	...templateText(defaultTemplate),
	[`clause.${last}.key`]: '',
	[`clause.${last}.title`]: '',
	[`clause.${last}.text`]: '',
	[`clause.${last}.place`]: String(last + 1),
	...change,
})
function clausesOf(change: Typed) {
	const filled = read(templateForm, sent(change))
	return filled.ok ? filled.value.clauses : filled.errors
}

describe('the clauses as they were typed', () => {
	test('come back as they were; a new one left empty is none', () => {
		expect(clausesOf({})).toEqual(defaultTemplate.clauses)
	})

	test('one that is given the place of another goes before it, up or down', () => {
		const keys = (change: Typed) => [clausesOf(change)].flat().map((clause) => ('key' in clause ? clause.key : ''))
		expect(keys({ 'clause.3.place': '2' }).slice(0, 4)).toEqual(['parties', 'visits', 'term', 'containers'])
		expect(keys({ 'clause.0.place': '3' }).slice(0, 4)).toEqual(['term', 'containers', 'parties', 'visits'])
	})

	test('a new one has a key of its own, out of its title', () => {
		const fresh = {
			[`clause.${last}.title`]: 'Weather!',
			[`clause.${last}.text`]: 'It rains.',
			[`clause.${last}.on`]: 'on',
		}
		expect([clausesOf(fresh)].flat().at(-1)).toMatchObject({ key: 'weather-2', title: 'Weather!', isOn: true })
	})

	test.each([
		['a title of ten thousand characters', { 'clause.0.title': 'a'.repeat(10_000) }, 'clause.0.title'],
		['control characters', { 'clause.1.text': 'a\u0007b' }, 'clause.1.text'],
		['a place that is none', { 'clause.2.place': 'first' }, 'clause.2.place'],
		['a key that is none', { 'clause.0.key': 'Not A Key' }, 'clause.0.key'],
	])('are refused with %s', (_, change, at) => {
		expect(Object.keys(clausesOf(change))).toEqual([at])
	})
})
