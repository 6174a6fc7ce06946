import { describe, expect, test } from 'vitest'
import { cautions } from '@/lib/proposal/cautions'
import type { Card, Material } from '@/lib/proposal/facts'
import type { Hazard } from '@/lib/recipe/material'
import { card, first, materials } from './sample'

const [birch, fir, globes, holly, lights, stakes, picks] = materials
const called = (name: string, ...hazards: Hazard[]): Material => ({
	...(stakes ?? first(materials)),
	name,
	hazards,
})

describe('what a client should know', () => {
	test.each<{ name: string; of: (Material | undefined)[]; at?: Card[]; says: string[] }>([
		{ name: 'nothing of bare branches and globes', of: [birch, globes, stakes], says: [] },
		{
			name: 'what is poisonous, and whom to call',
			of: [called('yew', 'poisonous to people')],
			says: [
				'Yew is poisonous if eaten; keep children from it.',
				'If someone has eaten of it, call your poison line at once.',
			],
		},
		{
			name: 'what is poisonous to pets alone',
			of: [called('cyclamen', 'poisonous to pets')],
			says: ['Cyclamen is poisonous to pets.', 'If someone has eaten of it, call your poison line at once.'],
		},
		{
			name: 'small parts are not poison',
			of: [picks],
			says: ['Cone picks has small parts; keep it from small children and pets.'],
		},
		{
			name: 'each hazard of each material once, though it stands in two lines',
			of: [called('holly', 'poisonous to pets'), called('holly', 'poisonous to pets', 'small parts')],
			says: [
				'Holly is poisonous to pets.',
				'Holly has small parts; keep it from small children and pets.',
				'If someone has eaten of it, call your poison line at once.',
			],
		},
		{
			// NEC 590.3(B): temporary wiring for holiday lighting is for 90 days.
			name: 'lights',
			of: [lights],
			says: [
				'Lights are for outdoors and want a GFCI-protected outlet; no cord across a walk. They come down within 90 days.',
			],
		},
		{
			name: 'cut greens',
			of: [fir],
			says: ['Greens dry out over the winter: keep them from heaters and open flames.'],
		},
		{
			name: 'weight, container by container',
			of: [],
			at: [
				card(1, 'Left urn', { limitedWeight: 'balcony' }),
				card(2, 'Right urn'),
				card(3, 'Long box', { limitedWeight: 'railing' }),
			],
			says: [
				'Left urn stands on a balcony: have a licensed engineer say what it may carry when full and wet.',
				'Long box stands on a railing: have a licensed engineer say what it may carry when full and wet.',
			],
		},
		{
			// Four feet, 121.92 cm: common practice, no published source; the local authority says what holds.
			name: 'a walk narrower than four feet',
			of: [],
			at: [card(1, 'Left urn', { walkLeftCm: 121.9 }), card(2, 'Right urn', { walkLeftCm: 122 })],
			says: ['Left urn leaves a narrow walk: ask the local authority for the width to be kept clear.'],
		},
		{
			name: 'all of it, in this order',
			of: [holly, lights, fir],
			at: [card(1, 'Left urn', { limitedWeight: 'deck', walkLeftCm: 90 })],
			says: [
				'Holly is poisonous if eaten; keep children from it.',
				'Holly is poisonous to pets.',
				'If someone has eaten of it, call your poison line at once.',
				'Lights are for outdoors and want a GFCI-protected outlet; no cord across a walk. They come down within 90 days.',
				'Greens dry out over the winter: keep them from heaters and open flames.',
				'Left urn stands on a deck: have a licensed engineer say what it may carry when full and wet.',
				'Left urn leaves a narrow walk: ask the local authority for the width to be kept clear.',
			],
		},
	])('$name', ({ of, at = [], says }) => {
		const known = of.filter((each) => each !== undefined)
		expect(known).toHaveLength(of.length)
		expect(cautions(known, at)).toEqual(says)
	})
})
