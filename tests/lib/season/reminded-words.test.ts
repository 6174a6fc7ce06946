import { expect, test } from 'vitest'
import { remindedInWords } from '@/lib/season/reminded-words'

test.each([
	[5, 0, 'Five clients were reminded.'],
	[1, 2, 'One client was reminded. Two clients were not, since they were reminded in the last two days.'],
	[0, 1, 'Nobody was reminded. One client was not, since they were reminded in the last two days.'],
	[0, 0, 'Nobody was reminded. Nobody owes an answer.'],
])('%i reminded, %i lately', (reminded, lately, says) => {
	expect(remindedInWords({ reminded, lately })).toBe(says)
})
