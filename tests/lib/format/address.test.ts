import { expect, test } from 'vitest'
import { masked } from '@/lib/format/address'

test.each([
	{ name: 'a name', address: 'mara@ninefold.example', says: 'm…@ninefold.example' },
	{ name: 'a name of one letter', address: 'q@quay.example', says: 'q…@quay.example' },
	{ name: 'a name with a tag', address: 'ivo+doors@mill.example', says: 'i…@mill.example' },
])('$name: $says', ({ address, says }) => {
	expect(masked(address)).toBe(says)
})
