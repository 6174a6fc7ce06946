import fc from 'fast-check'
import { type Hex, hex } from '@/lib/units/hex'

export const hexes: fc.Arbitrary<Hex> = fc
	.integer({ min: 0, max: 0xffffff })
	.map((value) => hex(`#${value.toString(16).padStart(6, '0')}`))
