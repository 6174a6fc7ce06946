import type { Point } from './point'

/** To the last of its points: one point is a line, two a quadratic curve, three a cubic one. */
export type Leg = readonly [Point] | readonly [Point, Point] | readonly [Point, Point, Point]

export type Line = { readonly from: Point; readonly legs: readonly Leg[]; readonly closed: boolean }

/** An ellipse; `tilt` as a heading. */
export type Round = {
	readonly centre: Point
	readonly acrossCm: number
	readonly alongCm: number
	readonly tilt: number
}

export type Shape = Line | Round

export const line = (from: Point, ...legs: Leg[]): Line => ({ from, legs, closed: false })
export const closed = (from: Point, ...legs: Leg[]): Line => ({ from, legs, closed: true })

/** Straight from point to point. */
export const polygon = ([from = [0, 0], ...rest]: readonly Point[]): Line =>
	closed(from, ...rest.map((to): Leg => [to]))

export const disc = (centre: Point, radiusCm: number): Round => oval(centre, radiusCm * 2, radiusCm * 2, 0)

export const oval = (centre: Point, acrossCm: number, alongCm: number, tilt: number): Round => ({
	centre,
	acrossCm,
	alongCm,
	tilt,
})

/** As a stroke with round ends: a disc as wide as the stroke. */
export const dot = (at: Point): Line => line(at, [at])
