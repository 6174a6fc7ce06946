import { expect, test } from 'vitest'
import { spotWords } from '@/lib/colour/site/spot-words'

test.each([
	[0.1, 0.9, 'low on the left'],
	[0.9, 0.05, 'high on the right'],
	[0.5, 0.5, 'in the middle'],
	[0.5, 0.2, 'high in the middle'],
	[0.2, 0.5, 'on the left'],
	[0, 1, 'low on the left'],
])('%d from the left and %d from the top is %s', (x, y, words) => expect(spotWords({ x, y })).toBe(words))
