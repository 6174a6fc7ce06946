import { expect, test } from 'vitest'
import { changesInWords, documentChanges } from '@/lib/agreement/document/changes'
import { defaultTemplate } from '@/lib/agreement/template/default-template'
import type { Template } from '@/lib/agreement/template/template'
import { cents } from '@/lib/units/cents'
import { facts, quarterly, spring, summer, terms, winter } from '../sample'
import { issued } from './issued'

const before = issued()
const told = (...[its, known, template]: Parameters<typeof issued>) =>
	documentChanges(before, issued(its, known, template)).map(({ of, was, is }) => `${of}: ${was} → ${is}`)
const withClauses = (change: (clauses: Template['clauses']) => Template['clauses']): Template => ({
	...defaultTemplate,
	clauses: change(defaultTemplate.clauses),
})
const fields = (all: readonly string[]) => all.map((each) => each.split(':')[0])

test('nothing between a document and itself, nor in a new number', () => {
	expect(told()).toEqual([])
	expect(documentChanges(before, { ...before, number: 2, supersedes: null, templateVersion: 9 })).toEqual([])
	expect(changesInWords([])).toBe('Nothing is different from the agreement before.')
})

test('a price: itself, the total, the instalments, and the clauses that say them', () => {
	const dearer = { ...spring, price: { is: 'fixed', cents: cents(40_001) } as const }
	const all = told({ ...terms, seasons: [winter, dearer, summer] })
	expect(all.slice(0, 2)).toEqual([
		'Fixed prices together: $996.51 → $1,012.51',
		'Price of spring 2027: $384.01 → $400.01',
	])
	expect(fields(all).slice(2)).toEqual(['Instalments', 'Clause “Price”', 'Clause “How it is paid”'])
})

test('from quoted to fixed', () => {
	const fixed = { ...summer, price: { is: 'fixed', cents: cents(10_000) } as const }
	expect(told({ ...terms, seasons: [winter, spring, fixed] })).toContain(
		'Price of summer 2027: quoted each season → $100.00',
	)
})

test('a plan', () => {
	const all = told({ ...terms, plan: { ...quarterly, months: 6, count: 2 } })
	expect(all[0]).toBe('How it is paid: in 4 instalments, quarterly → in 2 instalments, every 6 months')
	expect(fields(all)).toEqual(['How it is paid', 'Instalments', 'Clause “How it is paid”'])
})

test('containers that come and go, with their place', () => {
	const alone = told({ ...terms, seasons: [{ ...winter, containers: spring.containers }, spring] })
	expect(alone).toContain('Containers of winter 2026–27: Left urn and Trough → Left urn')
	expect(alone).toContain('Container “Trough”: Trough (trough, 36 in by 8 in) at Yard gate → null')
	expect(alone).toContain('Place “Yard gate”: Yard gate, 9 Mill Row → null')
	expect(alone).toContain('Price of summer 2027: quoted each season → null')
})

test('a container under another name is one that changed, not two', () => {
	const renamed = facts.containers.map((each) => (each.name === 'Trough' ? { ...each, name: 'Long trough' } : each))
	const all = told(terms, { ...facts, containers: renamed })
	expect(all).toContain(
		'Container “Long trough”: Trough (trough, 36 in by 8 in) at Yard gate → Long trough (trough, 36 in by 8 in) at Yard gate',
	)
	expect(fields(all).filter((each) => each?.startsWith('Container “'))).toHaveLength(1)
})

test('a clause: another text, another title, one that comes, one that goes', () => {
	const text = withClauses((all) =>
		all.map((each) => (each.key === 'access' ? { ...each, text: 'Ring twice.' } : each)),
	)
	expect(told(terms, facts, text)).toEqual([
		expect.stringMatching(/^Clause “Access and outlets”: On the days.* → Ring twice\.$/s),
	])
	const title = withClauses((all) =>
		all.map((each) => (each.key === 'access' ? { ...each, title: 'The way in' } : each)),
	)
	expect(told(terms, facts, title)).toEqual(['Title of “The way in”: Access and outlets → The way in'])
	const come = withClauses((all) => [...all, { key: 'dogs', title: 'Dogs', text: 'Tie them.', isOn: true, order: 999 }])
	expect(told(terms, facts, come)).toEqual(['Clause “Dogs”: null → Tie them.'])
	const gone = told({ ...terms, without: ['lights'] })
	expect(gone).toEqual([expect.stringMatching(/^Clause “Lights”: Lights that we hang.* → null$/s)])
})

test('the same both ways, with was and is changed about', () => {
	const after = issued({ ...terms, seasons: [winter, spring], without: ['photographs'] })
	const turned = documentChanges(after, before).map(({ was, is }) => `${is} → ${was}`)
	expect(turned.toSorted()).toEqual(
		documentChanges(before, after)
			.map(({ was, is }) => `${was} → ${is}`)
			.toSorted(),
	)
	expect(turned.length).toBeGreaterThan(3)
})

test('in a sentence', () => {
	const all = documentChanges(before, issued({ ...terms, plan: { ...quarterly, months: 6, count: 2 } }))
	expect(changesInWords(all)).toBe(
		'3 things are different from the agreement before: How it is paid, Instalments and Clause “How it is paid”.',
	)
	expect(changesInWords(all.slice(0, 1))).toBe('1 thing is different from the agreement before: How it is paid.')
})
