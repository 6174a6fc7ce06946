import { n } from '../pen/n'
import { type Point, smoothTo } from '../pen/path'
import { type Body, onPaper } from './body'

/** Half width at a height above the foot, from the foot up. */
export type Profile = readonly (readonly [half: number, above: number])[]

/** A bowl is a cap of a sphere upon a small foot. */
function bowl({ top, bottom, height }: Body): Profile {
	const foot = Math.min(bottom, top * 0.8)
	const steps = [0, 0.1, 0.25, 0.45, 0.7, 1]
	return steps.map((share) => [foot + (top - foot) * Math.sqrt(1 - (1 - share) ** 2), height * share] as const)
}

/** Plinth, foot, knop, bowl and lip; measures as shares of foot, rim and height. */
const urn = ({ top, bottom, height }: Body): Profile => {
	const foot = Math.min(bottom, top)
	const waist = foot * 0.46
	return [
		[foot, 0],
		[foot, height * 0.055],
		[foot * 0.86, height * 0.075],
		[waist * 1.12, height * 0.16],
		[waist, height * 0.235],
		[waist * 1.3, height * 0.275],
		[waist * 1.1, height * 0.315],
		[top * 0.6, height * 0.42],
		[top * 0.77, height * 0.58],
		[top * 0.8, height * 0.76],
		[top * 0.85, height * 0.89],
		[top * 0.97, height * 0.955],
		[top, height * 0.975],
		[top, height],
	]
}

export function profileOf(body: Body): Profile {
	if (body.shape === 'bowl') return bowl(body)
	if (body.shape === 'urn') return urn(body)
	return [
		[body.bottom, 0],
		[body.top, body.height],
	]
}

export function halfAt(profile: Profile, above: number): number {
	const next = profile.findIndex(([, height]) => height >= above)
	const [upper, lower] = [profile[Math.max(next, 0)], profile[Math.max(next - 1, 0)]]
	if (upper === undefined || lower === undefined) return 0
	const rise = upper[1] - lower[1]
	return rise === 0 ? upper[0] : lower[0] + ((upper[0] - lower[0]) * (above - lower[1])) / rise
}

/** An arc round the front, from left to right. */
export const frontArc = (half: number, y: number): string =>
	`M${n(-half)} ${n(y)}A${n(half)} ${n(onPaper(half))} 0 0 0 ${n(half)} ${n(y)}`

/** Outline of the front between two heights: up the right side, round the front of the upper edge, down the left, round the lower. */
export function sideBetween(profile: Profile, from: number, to: number, more = 0): string {
	const inside = profile.filter(([, above]) => above > from && above < to)
	const points: Point[] = [
		[halfAt(profile, from) + more, -from],
		...inside.map(([half, above]): Point => [half + more, -above]),
		[halfAt(profile, to) + more, -to],
	]
	const left = points.map(([x, y]): Point => [-x, y]).toReversed()
	const [[low, lowY] = [0, 0]] = points
	const [high, highY] = points.at(-1) ?? [0, 0]
	const arc = (half: number, sweep: 0 | 1, x: number, y: number) =>
		`A${n(half)} ${n(onPaper(half))} 0 0 ${sweep} ${n(x)} ${n(y)}`
	return `M${n(low)} ${n(lowY)}${smoothTo([low, lowY], points.slice(1))}${arc(high, 1, -high, highY)}${smoothTo([-high, highY], left.slice(1))}${arc(low, 0, low, lowY)}Z`
}
