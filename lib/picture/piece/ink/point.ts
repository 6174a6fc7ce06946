/** In cm; y grows down, so that what grows up grows towards −y. */
export type Point = readonly [xCm: number, yCm: number]

/** Headings are in radians: 0 is up, positive to the right. */
export const ahead = ([x, y]: Point, heading: number, cm: number): Point => [
	x + Math.sin(heading) * cm,
	y - Math.cos(heading) * cm,
]

export const between = (a: Point, b: Point, t: number): Point => [a[0] + (b[0] - a[0]) * t, a[1] + (b[1] - a[1]) * t]
