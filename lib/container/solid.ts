import { isRound, type Shape } from './card'
import type { Inner } from './inner'

/** A hollow or a body of one shape: widths and depths at its two ends, and the height between them, in cm. */
export type Solid = Inner & { readonly shape: Shape }

/** Between two levels of an evenly tapering solid: V = h/6 · (A₁ + 4·A½ + A₂), exact for a prismatoid and a frustum. */
export function prismatoidCm3(area: (atCm: number) => number, from: number, to: number): number {
	return ((to - from) / 6) * (area(from) + 4 * area((from + to) / 2) + area(to))
}

/** Below `depth` in a bowl that is a cap of a sphere, `rim` its radius at the height `h`: π·d²·(3R − d)/3. */
function capCm3(rim: number, h: number, depth: number): number {
	const radius = (rim * rim + h * h) / (2 * h)
	return (Math.PI * depth * depth * (3 * radius - depth)) / 3
}

/** Area of the section at a height above the lower end, tapering evenly; of a bowl at its rim alone. */
export function sectionCm2({ shape, heightCm, ...of }: Solid, atCm: number): number {
	const between = (floor: number, rim: number) => floor + ((rim - floor) * atCm) / heightCm
	const area = between(of.bottomCm, of.topCm) * between(of.bottomDepthCm, of.topDepthCm)
	return isRound(shape) ? (Math.PI / 4) * area : area
}

/** What lies between two levels of a solid, in cm³; nothing where the upper is not above the lower. */
export function betweenCm3(of: Solid, from: number, to: number): number {
	if (!(to > from)) return 0
	if (of.shape !== 'bowl') return prismatoidCm3((at) => sectionCm2(of, at), from, to)
	const below = (depth: number) => capCm3(of.topCm / 2, of.heightCm, depth)
	return below(to) - below(from)
}
