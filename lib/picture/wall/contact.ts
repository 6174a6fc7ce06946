import { linear } from '../pen/gradient'
import { rect } from '../pen/path'
import type { Pen } from '../pen/pen'

/** The line of shade under a straight edge that stands on the ground, gone at its ends. */
export function contact(x: number, y: number, half: number, { defs }: Pen): string {
	const shade = (dark: number) =>
		linear(defs, 'across', [
			[0, 'black', 0],
			[0.05, 'black', dark],
			[0.95, 'black', dark],
			[1, 'black', 0],
		])
	return (
		rect(x - half * 1.03, y - 1, half * 2.1, 3, shade(0.2)) + rect(x - half * 1.01, y - 1, half * 2.04, 1.8, shade(0.4))
	)
}
