import { expect, test } from 'vitest'
import { named } from '@/lib/forms/named'

test.each([
	['Answer by', 'Choose a day.', 'Answer by: choose a day.'],
	['Door pot', 'Keep this to 1000 characters.', 'Door pot: keep this to 1000 characters.'],
	[undefined, 'Choose a day.', 'Choose a day.'],
])('%s, %s', (label, says, told) => {
	expect(named(label, says)).toBe(told)
})
