import { describe, expect, test } from 'vitest'
import { weight } from '@/lib/format/weight'

describe('a weight as the studio reads it', () => {
	test.each([
		{ name: 'a full pot', kg: 96.3, inch: '212 lb', metric: '96 kg' },
		{ name: 'greens', kg: 2.84, inch: '6.3 lb', metric: '2.8 kg' },
		{ name: 'what a person lifts', kg: 23, inch: '51 lb', metric: '23 kg' },
		{ name: 'nothing', kg: 0, inch: '0 lb', metric: '0 kg' },
	])('$name: $inch, $metric', ({ kg, inch, metric }) => {
		expect([weight(kg, 'in'), weight(kg, 'cm')]).toEqual([inch, metric])
	})
})
