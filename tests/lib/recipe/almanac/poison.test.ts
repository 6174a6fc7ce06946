import { describe, expect, test } from 'vitest'
import { listedHazards } from '@/lib/recipe/almanac/poison'

const both = ['poisonous to people', 'poisonous to pets']

describe('poisonous by its name', () => {
	test.each([
		{ name: 'Yew', is: both },
		{ name: 'Taxus baccata tips', is: both },
		{ name: 'variegated holly', is: both },
		{ name: 'tips of hollies', is: both },
		{ name: 'ENGLISH IVY', is: both },
		{ name: 'ornamental pepper', is: ['poisonous to people'] },
		{ name: 'russet chrysanthemum', is: ['poisonous to pets'] },
		{ name: 'trailing eucalyptus', is: ['poisonous to pets'] },
		{ name: 'yew and ornamental pepper', is: both },
		{ name: 'noble fir', is: [] },
		{ name: 'hollyhock', is: [] },
		{ name: 'pepperberry', is: [] },
		{ name: 'window boxes', is: [] },
	])('$name: $is', ({ name, is }) => {
		expect(listedHazards(name, 'live').toSorted()).toEqual(is)
	})

	test.each(['faux', 'ornament', 'light', 'mechanics'] as const)('of %s nothing is poisonous', (kind) => {
		expect(listedHazards('holly berry', kind)).toEqual([])
		expect(listedHazards('holly berry', 'fresh')).toEqual(both)
	})
})
