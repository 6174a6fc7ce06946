import { gzipSync } from 'node:zlib'
import { describe, expect, test } from 'vitest'
import { shapes } from '@/lib/container/card'
import { wallKinds } from '@/lib/container/site'
import { picture } from '@/lib/picture/picture'
import { quarters } from '@/lib/season/season'
import { hex } from '@/lib/units/hex'
import { palettes } from '../../picture/lines'
import { potOf } from '../../picture/vessels'

const hours = ['day', 'evening'] as const

/** A page shows several: what one picture of two containers may weigh, plain and compressed. */
const most = { plain: 80_000, zipped: 20_000 }

const cases = quarters.flatMap((quarter) =>
	Object.entries(palettes[quarter]).map(([palette, lines]) => ({ quarter, palette, lines })),
)

describe('a picture of two containers is light', () => {
	test.each(cases)('$quarter, $palette', ({ quarter, lines }) => {
		const drawn = shapes.flatMap((shape, row) =>
			wallKinds.map((kind, column) => {
				const pot = potOf(shape, lines)
				const wall = { kind, hex: hex('#88837a') }
				const hour = hours[(row + column) % 2] ?? 'day'
				const scene = { quarter, hour, wall, door: hex('#7d3a2c'), measure: 'none', pots: [pot, pot] } as const
				return picture(scene, { ratio: 1.5 })
			}),
		)
		expect(Math.max(...drawn.map((svg) => Buffer.byteLength(svg)))).toBeLessThan(most.plain)
		expect(Math.max(...drawn.map((svg) => gzipSync(svg).length))).toBeLessThan(most.zipped)
	})
})
