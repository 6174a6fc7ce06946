import fc from 'fast-check'
import type { PaletteAsk } from '@/lib/colour/palette/palette'
import { wallKinds } from '@/lib/container/site'
import { roles } from '@/lib/recipe/material'
import type { DesignMaterial } from '@/lib/recipe/traits'
import { type Hex, hex } from '@/lib/units/hex'
import { hexes } from '../arbitrary'
import { material, winter } from '../material'

/** A bakery: copper pans in the window, a plum awning, brass on the door, a dark shop glass behind the pots. */
export const bakery = (more: Partial<PaletteAsk> = {}): PaletteAsk => ({
	site: [
		{ name: 'baking pans', hex: hex('#b5653a'), side: 'inside' },
		{ name: 'awning', hex: hex('#6d3049'), side: 'outside' },
		{ name: 'door brass', hex: hex('#b08d4f'), side: 'outside' },
	],
	wall: { kind: 'shop glass', hex: hex('#3f5a60') },
	door: hex('#7d3a2c'),
	materials: Object.values(winter),
	month: 11,
	...more,
})

const drawnMaterial = fc.record({
	colour: hexes,
	role: fc.constantFrom(...roles),
	piece: fc.constantFrom('green', 'branch', 'accent', 'plant'),
	inStock: fc.constantFrom(0, 0, 6),
	had: fc.constantFrom([], [11], [4]),
	lasts: fc.constantFrom([], [11, 12, 1], [5]),
})

export const drawnMaterials = (most: number): fc.Arbitrary<DesignMaterial[]> =>
	fc
		.array(drawnMaterial, { maxLength: most })
		.map((all) => all.map(({ colour, ...rest }, n): DesignMaterial => material(n, `thing ${n}`, colour, rest)))

const siteColour = fc.record({
	name: fc.constantFrom('sign', 'awning', 'door handle', 'a very long name for what is only a shutter'),
	hex: hexes,
	side: fc.constantFrom('inside', 'outside'),
})

/** Any front, any month's materials, few enough to count everything by hand. */
export const asks = (most = 14): fc.Arbitrary<PaletteAsk> =>
	fc.record({
		site: fc.array(siteColour, { maxLength: 5 }),
		wall: fc.record({ kind: fc.constantFrom(...wallKinds), hex: hexes }),
		door: fc.option(hexes),
		materials: drawnMaterials(most),
		month: fc.constant(11),
	})

/** What may be in a palette, said once more: seen by day, at hand in the month or stored, and standing in it. */
export const usable = ({ materials, month }: PaletteAsk): readonly (DesignMaterial & { hex: Hex })[] =>
	materials.filter(({ kind, role, form, had, lasts, inStock }) => {
		const isSeen = kind !== 'light' && kind !== 'mechanics' && role !== 'mechanics' && form !== 'unseen'
		const isAtHand = inStock > 0 || had.length === 0 || had.includes(month)
		return isSeen && isAtHand && (lasts.length === 0 || lasts.includes(month))
	})
