import { describe, expect, test } from 'vitest'
import { mixVolume, volume } from '@/lib/format/volume'

describe('a volume as the studio reads it', () => {
	test.each([
		{ name: 'the soil of a pot', litres: 48.2, inch: '12.7 gal', metric: '48.2 L' },
		{ name: 'a gallon', litres: 3.785411784, inch: '1 gal', metric: '3.8 L' },
		{ name: 'a small root ball', litres: 1.2, inch: '1.3 liquid qt', metric: '1.2 L' },
		{ name: 'nothing', litres: 0, inch: '0 liquid qt', metric: '0 L' },
	])('$name: $inch, $metric', ({ litres, inch, metric }) => {
		expect([volume(litres, 'in'), volume(litres, 'cm')]).toEqual([inch, metric])
	})

	test('potting mix is sold by the dry quart', () => {
		expect([mixVolume(48, 'in'), mixVolume(48, 'cm')]).toEqual(['43.6 dry qt', '48 L'])
	})
})
