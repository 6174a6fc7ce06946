import { describe, expect, test } from 'vitest'
import { verdict } from '@/lib/access/decide'
import { type Act, table } from '@/lib/access/table'
import { type Person, people } from '@/lib/access/viewer'

// Written out whole, so that a right that changes shows here: m may, f forbidden (403), . hidden (404).
// The columns: designer, helper, approver, payer, looker, contact of another client, token holder, signed out, system.
const matrix = {
	//                       d h a p l c t s y
	'see the studio': '      m . . . . . . . .',
	'change settings': '     m . . . . . . . .',
	'see the season': '      m . . . . . . . m',
	'plan a season': '       m . . . . . . . .',
	'see clients': '         m . . . . . . . .',
	'change clients': '      m . . . . . . . .',
	'see the catalogue': '   m . . . . . . . .',
	'change the catalogue': 'm . . . . . . . .',
	'see what to install': ' m m . . . . . . .',
	'see visits': '          m m . . . . . . .',
	'record visits': '       m m . . . . . . .',
	'see the draft': '       m . . . . . . . .',
	'change the draft': '    m . . . . . . . .',
	'see the costing': '     m . . . . . . . .',
	publish: '               m . . . . . . . .',
	'steer the proposal': '  m . . . . . . . .',
	remind: '                m . . . . . . . .',
	'answer by phone': '     m . . . . . . . .',
	'see the client': '      m . m m m . . . m',
	'see the proposal': '    m . m m m . . . m',
	'answer the proposal': ' f . m f f . . . .',
	'mark as seen': '        f . m m m . . . .',
	'see a photo': '         m m m m m . . . .',
	'say what is wrong': '   . . m m m . . . .',
	'see agreements': '      m . . . . . . . m',
	'change agreements': '   m . . . . . . . .',
	'see the agreement': '   m . m m m . . . m',
	'read its money': '      m . m m f . . . m',
	'sign the agreement': '  f . m f f . . . .',
	'see accounts': '        m . . . . . . . m',
	'change accounts': '     m . . . . . . . m',
	'see the account': '     m . m m f . . . m',
	'see the record': '      m . . . . . . . m',
	'erase a client': '      m . . . . . . . .',
	'send mail': '           . . . . . . . . m',
	'keep house': '          . . . . . . . . m',
	'see a cover': '         m m m m m m . m m',
	'read mail copies': '    m m m m m m . m m',
} as const satisfies Record<Act, string>

const said = { m: 'may', f: 'forbidden', '.': 'hidden' } as const
const acts = Object.keys(table).filter((act): act is Act => Object.hasOwn(table, act))

const rows = acts.flatMap((act) => {
	const marks = matrix[act].trim().split(' ')
	return people.map((person, at) => ({ act, person, mark: marks[at] ?? '' }))
})
const isMark = (mark: string): mark is keyof typeof said => Object.hasOwn(said, mark)

describe('who may do what', () => {
	test('the matrix has every act, and every person in every row', () => {
		expect(Object.keys(matrix).toSorted()).toEqual(acts.toSorted())
		expect(rows).toHaveLength(acts.length * people.length)
		for (const act of acts) expect(matrix[act].trim().split(' '), act).toHaveLength(people.length)
	})

	test.each(rows)('$person · $act · $mark', ({ person, act, mark }) => {
		expect(isMark(mark)).toBe(true)
		if (isMark(mark)) expect(verdict(person, act)).toBe(said[mark])
	})

	test('nobody stands in a row twice, nor in both of its lists', () => {
		for (const [act, row] of Object.entries(table)) {
			const named: readonly Person[] = [...row.may, ...('not' in row ? row.not : [])]
			expect(new Set(named).size, act).toBe(named.length)
		}
	})
})

const may = (person: Person) => acts.filter((act) => verdict(person, act) === 'may')
const seen = (person: Person) => acts.filter((act) => verdict(person, act) !== 'hidden')

describe('what the table must always hold', () => {
	test('who is signed out or holds a token finds nothing but the cover of a link and what a demo prints', () => {
		expect(seen('signed out')).toEqual(['see a cover', 'read mail copies'])
		expect(seen('token holder')).toEqual([])
	})

	test('a contact of another client finds what somebody signed out finds', () => {
		expect(seen('contact of another client')).toEqual(seen('signed out'))
	})

	test.each(['answer the proposal', 'sign the agreement'] as const)('to %s is an approver’s alone', (act) => {
		expect(people.filter((person) => verdict(person, act) === 'may')).toEqual(['approver'])
	})

	test('who looks may do what an approver may, but for answers, signatures and the money of agreements', () => {
		const theirs = new Set<string>(['answer the proposal', 'sign the agreement', 'read its money', 'see the account'])
		expect(may('looker')).toEqual(may('approver').filter((act) => !theirs.has(act)))
		expect(seen('looker')).toEqual(seen('approver'))
	})

	test('a helper sees no client, no proposal, no price and no record', () => {
		expect(may('helper')).toEqual([
			'see what to install',
			'see visits',
			'record visits',
			'see a photo',
			'see a cover',
			'read mail copies',
		])
		expect(seen('helper')).toEqual(may('helper'))
	})

	test('the costing and the draft are the designer’s alone', () => {
		for (const act of ['see the costing', 'see the draft', 'change the draft'] as const)
			expect(people.filter((person) => verdict(person, act) !== 'hidden')).toEqual(['designer'])
	})

	test('forbidden is only what one can see', () => {
		for (const person of people)
			for (const act of ['answer the proposal', 'mark as seen'] as const)
				if (verdict(person, act) === 'forbidden') expect(verdict(person, 'see the proposal')).toBe('may')
	})
})
