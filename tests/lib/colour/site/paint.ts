import type { PhotoSize } from '@/lib/colour/site/photo'

/** sRGB and linear light, both 0 to 1 (IEC 61966-2-1, written out: not the library that is tested). */
export const linear = (of: number): number => (of <= 0.04045 ? of / 12.92 : ((of + 0.055) / 1.055) ** 2.4)
export const encoded = (of: number): number => (of <= 0.0031308 ? of * 12.92 : 1.055 * of ** (1 / 2.4) - 0.055)

export const bytes = (of: string): [number, number, number] => {
	const value = Number.parseInt(of.slice(1), 16)
	return [value >> 16, (value >> 8) & 255, value & 255]
}

const lightOf = (of: string): number[] => bytes(of).map((level) => linear(level / 255))

const byte = (of: number): number => Math.min(255, Math.max(0, Math.round(of)))

/** A colour in so much less light, channel by channel: what a shadow or a coloured lamp makes of it. */
export function inLight(of: string, gains: readonly [number, number, number]): string {
	const levels = bytes(of).map((level, index) => byte(255 * encoded(linear(level / 255) * (gains[index] ?? 1))))
	return `#${levels.map((level) => level.toString(16).padStart(2, '0')).join('')}`
}

export type Patch = { readonly colour: string; readonly at: readonly [x: number, y: number, w: number, h: number] }

/** Numbers from 0 to 1, the same from the same seed (any good mixing would do). */
function diceFrom(seed: number): () => number {
	let state = seed
	return () => {
		state = (Math.imul(state ^ (state >>> 15), 0x2c1b3c6d) + 0x6d2b79f5) | 0
		return ((state ^ (state >>> 14)) >>> 0) / 2 ** 32
	}
}

/** Normal, of mean 0 and deviation 1 (Box and Muller 1958). */
const normal = (dice: () => number): number => Math.sqrt(-2 * Math.log(1 - dice())) * Math.cos(2 * Math.PI * dice())

export type Faults = {
	/** Standard deviation of a sensor's noise, in 8-bit levels. */
	readonly noise?: number
	/** Part of the light that is gone at the right edge, growing evenly from the left. */
	readonly shade?: number
	readonly gains?: readonly [number, number, number]
}

export type Painted = { readonly pixels: Uint8Array; readonly size: PhotoSize & { channels: 3 } }

/** A picture of flat patches on a ground, later patches over earlier ones, measures in pixels. */
export function paint(
	width: number,
	height: number,
	ground: string,
	patches: readonly Patch[],
	faults: Faults = {},
): Painted {
	const { noise = 0, shade = 0, gains = [1, 1, 1] } = faults
	const dice = diceFrom(41)
	const pixels = new Uint8Array(width * height * 3)
	const lights = new Map([ground, ...patches.map(({ colour }) => colour)].map((of) => [of, lightOf(of)] as const))
	for (let y = 0; y < height; y++)
		for (let x = 0; x < width; x++) {
			const on = patches.findLast(({ at: [left, top, w, h] }) => x >= left && x < left + w && y >= top && y < top + h)
			const light = 1 - (shade * x) / width
			for (const [channel, full] of (lights.get(on?.colour ?? ground) ?? []).entries()) {
				const lit = 255 * encoded(full * light * (gains[channel] ?? 1))
				pixels[(y * width + x) * 3 + channel] = byte(lit + (noise === 0 ? 0 : noise * normal(dice)))
			}
		}
	return { pixels, size: { width, height, channels: 3 } }
}

/** A shop front 400 × 300: brick, pavement, a navy door with its letter box, an awning, a shop sign. */
export const front = {
	brick: '#9b5f4a',
	patches: [
		{ colour: '#88837a', at: [0, 255, 400, 45] },
		{ colour: '#20344f', at: [160, 90, 80, 165] },
		{ colour: '#b3924c', at: [180, 170, 40, 12] },
		{ colour: '#6d3049', at: [0, 45, 400, 36] },
		{ colour: '#e6dfcf', at: [20, 120, 100, 90] },
	],
} as const satisfies { brick: string; patches: readonly Patch[] }
