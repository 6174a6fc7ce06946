import { hex } from '../../units/hex'
import { radial } from '../pen/gradient'
import { ellipse } from '../pen/path'
import type { Pen } from '../pen/pen'
import type { Stood } from './stood'

const lamp = hex('#ffc873')

export const isLit = ({ pot }: Stood): boolean => pot.lines.some(({ form, count }) => form === 'lights' && count > 0)

/** The warm pool that lit pots throw upon the wall, or upon the ground before them. */
export function pools(stood: readonly Stood[], on: 'wall' | 'ground', pen: Pen): string {
	const lit = stood.filter(isLit)
	if (!pen.light.isEvening || lit.length === 0) return ''
	const glow = radial(pen.defs, [
		[0, lamp, on === 'wall' ? 0.4 : 0.3],
		[0.35, lamp, on === 'wall' ? 0.2 : 0.16],
		[1, lamp, 0],
	])
	return lit
		.map(({ x, y, body, elbow, tip }) =>
			on === 'wall'
				? ellipse(x, y - body.height - tip * 0.3, elbow * 2.1, tip * 0.75 + 48, glow)
				: ellipse(x, Math.max(y, 4) + 4, elbow * 2, 17, glow),
		)
		.join('')
}
