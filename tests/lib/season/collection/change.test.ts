import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { type Change, changed } from '@/lib/season/collection/change'
import { collectionSchema, emptyCollection } from '@/lib/season/collection/collection'
import { first } from '../../proposal/sample'
import { collection } from './sample'

const design = (key: string | null, name: string): Change => ({
	is: 'design',
	design: { ...first(collection.designs), key, name },
})
const keysAfter = (change: Change) => {
	const next = changed(collection, change)
	return next.ok ? next.collection.designs.map(({ key, name }) => [key, name]) : next.why
}

describe('one thing of a collection changed', () => {
	test('a new design comes last, under a key of its own', () => {
		expect(keysAfter(design(null, 'First frost'))).toEqual([
			...collection.designs.map(({ key, name }) => [key, name]),
			['d5', 'First frost'],
		])
	})

	test('a design takes its own place', () => {
		expect(keysAfter(design('d2', 'First frost'))).toEqual([
			['d1', 'Plum dusk'],
			['d2', 'First frost'],
			['d3', 'Rose garden'],
			['d4', 'Grey morning'],
		])
	})

	test.each([
		['another’s name in other letters', design(null, 'plum DUSK'), 'name taken'],
		['one that is not there', design('d9', 'First frost'), 'not there'],
		['to drop one that is not there', { is: 'drop', of: 'extras', key: 'd1' } as const, 'not there'],
	])('%s', (_, change, why) => {
		expect(keysAfter(change)).toBe(why)
	})

	test('a ninth design is one too many', () => {
		const names = ['one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine']
		const outcomes: (string | true)[] = []
		let now = emptyCollection
		for (const name of names) {
			const next = changed(now, design(null, name))
			outcomes.push(next.ok || next.why)
			now = next.ok ? next.collection : now
		}
		expect(outcomes).toEqual([...Array.from({ length: 8 }, () => true), 'too many'])
		expect(now.designs).toHaveLength(8)
	})

	test('whatever is done one after the other, keys and names differ and the schema holds', () => {
		const step = fc.oneof(
			fc.record({ key: fc.constantFrom(null, 'd1', 'd2', 'd3'), name: fc.constantFrom('a', 'A', 'b', 'c', 'd') }),
			fc.constantFrom('d1', 'd2', 'd3'),
		)
		fc.assert(
			fc.property(fc.array(step, { maxLength: 20 }), (steps) => {
				let now = emptyCollection
				for (const each of steps) {
					const change: Change =
						typeof each === 'string' ? { is: 'drop', of: 'designs', key: each } : design(each.key, each.name)
					const next = changed(now, change)
					now = next.ok ? next.collection : now
				}
				const names = now.designs.map(({ name }) => name.toLowerCase())
				expect(new Set(now.designs.map(({ key }) => key)).size).toBe(now.designs.length)
				expect(new Set(names).size).toBe(names.length)
				expect(collectionSchema.safeParse(now).success).toBe(true)
			}),
		)
	})
})
