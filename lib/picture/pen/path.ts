import { n } from './n'

export type Point = readonly [x: number, y: number]

const at = ([x, y]: Point) => `${n(x)} ${n(y)}`

/** Straight from point to point. */
export const straight = (points: readonly Point[]): string =>
	points.map((point, index) => `${index === 0 ? 'M' : 'L'}${at(point)}`).join('')

/** From the current point on, smoothly through `points` (a Catmull-Rom spline as cubic Béziers); `first` is where the pen is. */
export function smoothTo(first: Point, points: readonly Point[]): string {
	const all = [first, ...points]
	const get = (index: number): Point => all[Math.min(Math.max(index, 0), all.length - 1)] ?? first
	return points
		.map((end, index) => {
			const [before, start, after] = [get(index - 1), get(index), get(index + 2)]
			const out: Point = [start[0] + (end[0] - before[0]) / 6, start[1] + (end[1] - before[1]) / 6]
			const back: Point = [end[0] - (after[0] - start[0]) / 6, end[1] - (after[1] - start[1]) / 6]
			return `C${at(out)} ${at(back)} ${at(end)}`
		})
		.join('')
}

export const smooth = ([first, ...rest]: readonly [Point, ...Point[]]): string =>
	`M${at(first)}${smoothTo(first, rest)}`

/** A closed outline in whole numbers with its corners rounded off; `straightShare` of each side stays straight. */
export function pebble(corners: readonly Point[], straightShare = 0.36): string {
	const on = (index: number, share: number): Point => {
		const [a = [0, 0], b = [0, 0]] = [corners[index % corners.length], corners[(index + 1) % corners.length]]
		return [Math.round(a[0] + (b[0] - a[0]) * share), Math.round(a[1] + (b[1] - a[1]) * share)]
	}
	const [arrive, leave] = [0.5 - straightShare / 2, 0.5 + straightShare / 2]
	const step = (from: Point, to: Point) => `${n(to[0] - from[0])} ${n(to[1] - from[1])}`
	const sides = corners.map((_, index) => {
		const [start, bend, corner, end] = [on(index, arrive), on(index, leave), on(index + 1, 0), on(index + 1, arrive)]
		const side = straightShare === 0 ? '' : `l${step(start, bend)}`
		return `${side}q${step(bend, corner)} ${step(bend, end)}`
	})
	return `M${at(on(0, arrive))}${sides.join('').replaceAll(' -', '-')}z`
}

export const rect = (x: number, y: number, width: number, height: number, fill: string, more = ''): string =>
	`<rect x="${n(x)}" y="${n(y)}" width="${n(Math.max(0, width))}" height="${n(Math.max(0, height))}" fill="${fill}"${more}/>`

export const fill = (d: string, colour: string, opacity = 1): string =>
	`<path d="${d}" fill="${colour}"${opacity === 1 ? '' : ` opacity="${Math.round(opacity * 100) / 100}"`}/>`

export const line = (d: string, colour: string, width: number, opacity = 1): string =>
	`<path d="${d}" fill="none" stroke="${colour}" stroke-width="${Math.round(width * 100) / 100}"${
		opacity === 1 ? '' : ` opacity="${Math.round(opacity * 100) / 100}"`
	}/>`

export const ellipse = (x: number, y: number, rx: number, ry: number, colour: string, opacity = 1): string =>
	`<ellipse cx="${n(x)}" cy="${n(y)}" rx="${n(Math.max(0, rx))}" ry="${n(Math.max(0, ry))}" fill="${colour}"${
		opacity === 1 ? '' : ` opacity="${Math.round(opacity * 100) / 100}"`
	}/>`
