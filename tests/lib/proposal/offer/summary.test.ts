import { describe, expect, test } from 'vitest'
import type { OfferLine } from '@/lib/proposal/offer/offer'
import { layers } from '@/lib/proposal/offer/summary'
import type { Hazard, Role } from '@/lib/recipe/material'
import { hex } from '@/lib/units/hex'

const line = (role: Role, name: string, hazards: Hazard[] = []): OfferLine => ({
	role,
	name,
	hex: hex('#4b6b3e'),
	unit: 'stem',
	count: 7,
	holding: 'sold',
	hazards,
})

describe('what is in a pot, layer by layer', () => {
	test('in the order in which one would tell it, mechanics untold', () => {
		const pot = [
			line('accent', 'copper globes'),
			line('mechanics', 'stakes'),
			line('filler', 'noble fir'),
			line('thriller', 'birch'),
			line('filler', 'cedar'),
			line('spiller', 'ivy', ['poisonous to pets']),
			line('filler', 'boxwood', ['poisonous to people', 'poisonous to pets']),
		]
		expect(layers(pot)).toEqual([
			{ role: 'thriller', place: 'Up the middle', words: 'Birch' },
			{
				role: 'filler',
				place: 'Filling out',
				words: 'Noble fir, cedar and boxwood (poisonous if eaten and poisonous to pets)',
			},
			{ role: 'spiller', place: 'Over the rim', words: 'Ivy (poisonous to pets)' },
			{ role: 'accent', place: 'Accents', words: 'Copper globes' },
		])
	})

	test('a name and a hazard that come twice are told once', () => {
		const pot = [
			line('accent', 'berries', ['small parts']),
			line('accent', 'berries', ['small parts']),
			line('accent', 'picks'),
		]
		expect(layers(pot)).toEqual([{ role: 'accent', place: 'Accents', words: 'Berries (small parts) and picks' }])
	})

	test('nothing, or mechanics alone, has no layer', () => {
		expect(layers([])).toEqual([])
		expect(layers([line('mechanics', 'wire', ['small parts'])])).toEqual([])
	})
})
