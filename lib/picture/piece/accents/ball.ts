import { fill, type Layer } from '../ink/layer'
import type { Point } from '../ink/point'
import { closed, disc, oval } from '../ink/shape'
import type { Tones } from '../ink/tones'

/** A shatterproof ball: shade to lower right with light thrown back at its rim, a soft light and a gleam to upper left. */
export function ball(of: Tones, centre: Point, radiusCm: number): Layer[] {
	const at = (u: number, v: number): Point => [centre[0] + radiusCm * u, centre[1] + radiusCm * v]
	const shade = (edge: number, inner: number) =>
		closed(
			at(0.66, -0.7),
			[at(edge, -0.3), at(edge, 0.4), at(0.7, 0.7)],
			[at(0.4, edge), at(-0.3, edge), at(-0.7, 0.66)],
			[at(inner - 0.5, 0.78), at(inner + 0.22, inner), at(0.66, -0.7)],
		)
	return [
		fill(of.base, [disc(centre, radiusCm)]),
		fill(of.dark, [shade(1.06, 0.42)]),
		fill(of.light, [oval(at(-0.3, -0.34), radiusCm * 0.96, radiusCm * 0.7, -0.75)]),
		fill(of.pale, [oval(at(-0.42, -0.48), radiusCm * 0.42, radiusCm * 0.22, -0.75)]),
	]
}
