import { describe, expect, test } from 'vitest'
import { price } from '@/lib/pricing/price'
import { type Choice, chosen, everything } from '@/lib/pricing/quote/choice'
import { bare, containerId, extra, job, placeId, visit, words } from '../sample'

/** Two pots at the first door, one at the second, a garland hung where no pot stands. */
const doors = job({
	visits: [visit(1), visit(2, { takeDown: true }), visit(3)],
	containers: [bare(1), bare(2), bare(3, { place: placeId(2), isNew: true, soilL: 9 })],
	extras: [extra('wreath', { place: placeId(2) }), extra('garland', { place: placeId(3) })],
})

const names = (choice: Choice) => chosen(price(doors, words).list.parts, choice).map(({ is, name }) => `${is}: ${name}`)

const first = ['container: pot 1', 'container: pot 2', 'disposal: pot 1', 'disposal: pot 2', 'travel: door 1']
const second = ['container: pot 3', 'soil: pot 3', 'take-down: pot 3', 'travel: door 2']
const third = ['extra: extra garland', 'travel: door 3']

describe('what a choice keeps', () => {
	test.each<{ name: string; choice: Choice; kept: string[] }>([
		{ name: 'every container and no extra', choice: everything, kept: [...first, ...second] },
		{
			name: 'a container left out takes its charges with it',
			choice: { leftOut: [containerId(1)], extras: [] },
			kept: ['container: pot 2', 'disposal: pot 2', 'travel: door 1', ...second],
		},
		{
			name: 'a door without a container is not visited',
			choice: { leftOut: [containerId(3)], extras: [] },
			kept: first,
		},
		{
			name: 'an extra is brought by a visit, though every container of the door is left out',
			choice: { leftOut: [containerId(3)], extras: ['wreath'] },
			kept: [...first, 'extra: extra wreath', 'travel: door 2'],
		},
		{
			name: 'a door that has only an extra is visited when that is chosen',
			choice: { leftOut: [], extras: ['garland'] },
			kept: [...first, ...second, ...third],
		},
		{ name: 'nothing but the design', choice: { leftOut: [1, 2, 3].map(containerId), extras: [] }, kept: [] },
	])('$name', ({ choice, kept }) => {
		expect(names(choice).toSorted()).toEqual([...kept, 'design: Design'].toSorted())
	})
})
