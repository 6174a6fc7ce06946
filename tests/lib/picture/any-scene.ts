import fc from 'fast-check'
import { walls as materials, shapes, stands } from '@/lib/container/card'
import { wallKinds } from '@/lib/container/site'
import type { Scene, SceneLine, ScenePot } from '@/lib/picture/scene'
import { forms } from '@/lib/recipe/look'
import { roles } from '@/lib/recipe/material'
import { quarters } from '@/lib/season/season'
import { type Hex, hex } from '@/lib/units/hex'

export const anyHex: fc.Arbitrary<Hex> = fc
	.integer({ min: 0, max: 0xffffff })
	.map((value) => hex(`#${value.toString(16).padStart(6, '0')}`))

/** What a card may hold, nothing, less than nothing and far too much among it. */
const anyCm = fc.oneof(
	{ weight: 5, arbitrary: fc.double({ min: 1, max: 150, noNaN: true }) },
	{ weight: 1, arbitrary: fc.constantFrom(0, -3, 1e-9, 1e9) },
)
const maybeCm = fc.option(anyCm)

export const anyLine: fc.Arbitrary<SceneLine> = fc.record({
	name: fc.string({ maxLength: 12 }),
	role: fc.constantFrom(...roles),
	form: fc.constantFrom(...forms),
	count: fc.oneof(fc.integer({ min: 0, max: 60 }), fc.constantFrom(0.3, 2.5, 9999)),
	hex: anyHex,
	secondHex: fc.option(anyHex),
	lengthCm: maybeCm,
	acrossCm: maybeCm,
})

const anyVessel = fc.record({
	shape: fc.constantFrom(...shapes),
	topCm: anyCm,
	topDepthCm: maybeCm,
	bottomCm: anyCm,
	bottomDepthCm: maybeCm,
	heightCm: anyCm,
	wallCm: anyCm,
	headspaceCm: anyCm,
	soilDepthCm: maybeCm,
})

export const anyPot: fc.Arbitrary<ScenePot> = fc.record({
	name: fc.string({ maxLength: 12 }),
	vessel: anyVessel,
	madeOf: fc.constantFrom(...materials),
	colour: anyHex,
	stands: fc.constantFrom(...stands),
	sillToGlassCm: maybeCm,
	lines: fc.array(anyLine, { maxLength: 6 }),
})

export const anyScene: fc.Arbitrary<Scene> = fc.record({
	quarter: fc.constantFrom(...quarters),
	hour: fc.constantFrom('day', 'evening'),
	wall: fc.record({ kind: fc.constantFrom(...wallKinds), hex: anyHex }),
	door: fc.option(anyHex),
	measure: fc.constantFrom('none', 'cm', 'in'),
	pots: fc.array(anyPot, { maxLength: 5 }),
})
