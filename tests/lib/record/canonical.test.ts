import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { canonical, type Json } from '@/lib/record/canonical'
import { hashOf } from '@/lib/record/hash'

const facts: fc.Arbitrary<Json> = fc.letrec<{ json: Json }>((tie) => ({
	json: fc.oneof(
		{ maxDepth: 3 },
		fc.constant(null),
		fc.boolean(),
		fc.integer(),
		fc.double({ noNaN: true, noDefaultInfinity: true }),
		fc.string({ unit: 'grapheme', maxLength: 6 }),
		fc.array(tie('json'), { maxLength: 4 }),
		fc.dictionary(fc.string({ unit: 'grapheme', maxLength: 4 }), tie('json'), { maxKeys: 4 }),
	),
})).json

/** The same value with the keys of every object written the other way round. */
function turned(value: Json): Json {
	if (Array.isArray(value)) return value.map(turned)
	if (value === null || typeof value !== 'object') return value
	return Object.fromEntries(
		Object.entries(value)
			.toReversed()
			.map(([key, inner]) => [key, turned(inner)]),
	)
}

describe('the one text of a value', () => {
	test('sorts keys and leaves no space', () => {
		const revision = { title: 'Winter', number: 2, pots: [{ z: 1, a: [] }], letter: null, 'a b': true }
		expect(canonical(revision)).toBe('{"a b":true,"letter":null,"number":2,"pots":[{"a":[],"z":1}],"title":"Winter"}')
	})

	test('does not depend on the order of keys', () => {
		fc.assert(
			fc.property(facts, (value) => {
				expect(canonical(turned(value))).toBe(canonical(value))
				expect(hashOf(turned(value))).toBe(hashOf(value))
			}),
			{ numRuns: 500 },
		)
	})

	test('reads back as the same value, and is then its own text', () => {
		fc.assert(
			fc.property(facts, (value) => {
				const text = canonical(value)
				const back: Json = JSON.parse(text)
				expect(back).toEqual(JSON.parse(JSON.stringify(value)))
				expect(canonical(back)).toBe(text)
			}),
			{ numRuns: 500 },
		)
	})

	test('what has no text is refused', () => {
		const lost: { toJSON: () => undefined } = { toJSON: () => undefined }
		// @ts-expect-error no JSON: it says that it is nothing
		expect(() => canonical(lost)).toThrow('canonical: the value has no JSON text')
	})
})
