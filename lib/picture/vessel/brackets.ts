import { hex } from '../../units/hex'
import { n } from '../pen/n'
import { line } from '../pen/path'
import type { Pen } from '../pen/pen'
import { shade } from '../pen/shade'
import { type Body, onPaper } from './body'

const iron = hex('#2b2d2f')

/** Two brackets of iron on which a box hangs. */
export function brackets(body: Body, { light }: Pen): string {
	const colour = light.tone(iron)
	const reach = onPaper(body.bottomDepth) + 0.4
	return [-0.66, 0.66]
		.map((share) => {
			const x = n(body.bottom * share)
			return (
				line(`M${x} ${n(reach)}v1.2q0 7-3.4 10.4`, colour, 1.5) +
				line(`M${x} ${n(reach + 1)}v13.4`, shade(colour, 0.08), 1.3)
			)
		})
		.join('')
}
