import { describe, expect, test } from 'vitest'
import { cardText, keptMeasures } from '@/app/(studio)/studio/clients/[client]/container/card-text'
import type { ClientPage } from '@/db/clients/read-clients'
import { usualWallCm } from '@/lib/container/card'
import { containerForm } from '@/lib/forms/places/card-form'
import { hex } from '@/lib/units/hex'
import { id } from '@/lib/units/id'

type Card = ClientPage['places'][number]['containers'][number]
const uuid = (n: number) => `01999999-0000-7000-8000-00000000000${n}`

/** Measured in inches, with a resin wall and the headspace that were not measured. */
const card: Card = {
	id: id<'container'>(uuid(1)),
	placeId: id<'place'>(uuid(2)),
	name: 'Left urn',
	position: 0,
	shape: 'square',
	topCm: 45.72,
	topDepthCm: 40.958,
	bottomCm: 30.163,
	bottomDepthCm: 28.575,
	heightCm: 50.8,
	wall: 'resin',
	wallCm: usualWallCm.resin,
	headspaceCm: 5,
	soilDepthCm: null,
	hasLiner: false,
	hasDrainHole: true,
	vesselKg: 7.5,
	colour: hex('#3a3d40'),
	owner: 'client',
	light: 'part',
	isWindy: true,
	isUnderEave: false,
	hasRoadSalt: false,
	sillToGlassCm: null,
	outletNear: true,
	hoseNear: false,
	waterer: 'client',
	stands: 'all round',
	limitedWeight: 'none',
	walkLeftCm: 121.92,
	retiredAt: null,
}

/** A box that is not ticked is not sent. */
const isTick = (name: string) => /^(has|is)[A-Z]|Near$/.test(name)
const shown = (of: Card) => cardText(of, 'in')

describe('a card as its form shows it, in inches', () => {
	test('measures to the eighth where they are one', () => {
		expect(shown(card)).toMatchObject({ topCm: '18', topDepthCm: '16.125', bottomCm: '11.875', walkLeftCm: '48' })
	})

	test('the weight of the empty vessel in pounds', () => {
		expect(shown(card)).toMatchObject({ vesselKg: '16.535' })
		expect(cardText(card, 'cm')).toMatchObject({ vesselKg: '7.5' })
	})

	test('what is usual stays empty, what was measured does not', () => {
		expect(shown(card)).toMatchObject({ wallCm: '', headspaceCm: '' })
		expect(shown({ ...card, wallCm: 1.27, headspaceCm: 3.81 })).toMatchObject({ wallCm: '0.5', headspaceCm: '1.5' })
	})

	test.each([
		['in inches', card],
		['in centimetres', { ...card, topCm: 46, heightCm: 51.3, wallCm: 1.2, headspaceCm: 4.6, walkLeftCm: 120 }],
	])('saved unchanged, a card that was measured %s stays as it was', (_, of) => {
		const { once, client, place, container, ...saved } = containerForm('in').parse({
			...Object.fromEntries(Object.entries(shown(of)).filter(([name, value]) => value === 'on' || !isTick(name))),
			...{ once: uuid(6), client: uuid(7), place: of.placeId, container: of.id },
		})
		expect([once, client, place, container]).toEqual([uuid(6), uuid(7), of.placeId, of.id])
		const { id: _id, placeId, position, retiredAt, ...kept } = of
		expect(keptMeasures(saved, of, 'in')).toEqual(kept)
	})
})
