import { hex } from '../../../units/hex'
import { between, diceOf, pick, wobble } from '../../pen/dice-of'
import { n } from '../../pen/n'
import type { Pen } from '../../pen/pen'
import { type Area, widthOf } from '../../wall/area'

const colours = [hex('#b0642c'), hex('#c08a34'), hex('#8a4426')] as const

/** A few leaves that the wind has left at the foot of the wall. */
export function leaves(area: Area, { defs, light }: Pen): string {
	const dice = diceOf('leaves')
	const ids = colours.map((colour) =>
		defs.add(
			(id) =>
				`<g id="${id}"><path d="M-2.4.3q1.6-1.8 4.8-.5-2.6 2-4.8.5z" fill="${light.tone(colour)}"/><path d="M-3.2.5l5-.7" stroke="${light.tone(colour)}" stroke-width=".25"/></g>`,
		),
	)
	const count = Math.min(18, Math.round(widthOf(area) / 26))
	return Array.from({ length: count }, () => {
		const [x, y] = [between(dice, area.left, area.right), 2.5 + between(dice, 0, 1) ** 2 * (area.bottom - 5)]
		const [first = '', ...others] = ids
		const id = pick(dice, [first, ...others])
		return `<use href="#${id}" transform="translate(${n(x)} ${n(y)})rotate(${Math.round(wobble(dice, 70))})scale(1 .62)"/>`
	}).join('')
}
