import { expect, test } from 'vitest'
import { acts } from '@/lib/record/acts'

test('every act of the record has a name of its own, in plain words', () => {
	expect(new Set(acts).size).toBe(acts.length)
	for (const act of acts) expect(act).toMatch(/^[a-z]+( [a-z]+)+$/)
})
