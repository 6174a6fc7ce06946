import fc from 'fast-check'
import { expect, test } from 'vitest'
import { onceFor } from '@/lib/record/once-for'
import { id, isId } from '@/lib/units/id'

const form = id<'once'>('01999999-0000-7000-8000-00000000000a')
const other = id<'once'>('01999999-0000-7000-8000-00000000000b')

test('the same form and thing have the same key; another form or thing has another', () => {
	expect(onceFor(form, 'a')).toBe(onceFor(form, 'a'))
	expect(new Set([onceFor(form, 'a'), onceFor(form, 'b'), onceFor(other, 'a'), form]).size).toBe(4)
})

test('it is a UUID of version 8 whatever the thing is called', () => {
	fc.assert(
		fc.property(fc.string(), (thing) => {
			const key = onceFor(form, thing)
			expect([isId(key), key[14]]).toEqual([true, '8'])
		}),
	)
})
