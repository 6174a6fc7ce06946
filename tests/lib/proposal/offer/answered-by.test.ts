import { expect, test } from 'vitest'
import { answeredBy } from '@/lib/proposal/offer/answered-by'

test.each([
	['client', { name: 'Maud Marrowby' }, 'by Maud Marrowby'],
	['client', undefined, 'by a contact'],
	[
		'studio',
		{ name: 'Isolde Fenn', said: 'Maud Marrowby' },
		'by phone, as Maud Marrowby said, taken down by Isolde Fenn',
	],
	['studio', { name: 'Isolde Fenn', said: '' }, 'by phone, taken down by Isolde Fenn'],
	['studio', undefined, 'by phone, taken down by the studio'],
] as const)('%s, %j: %s', (word, words, says) => {
	expect(answeredBy(word, words)).toBe(says)
})
