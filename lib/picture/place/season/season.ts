import { doorCm } from '../../front/door'
import { stepHalfCm } from '../../front/step'
import type { Pen } from '../../pen/pen'
import type { Scene } from '../../scene'
import type { Area } from '../../wall/area'
import { leaves } from './leaves'
import { drift } from './snow'

function snow(area: Area, hasDoor: boolean, pen: Pen): string {
	if (!hasDoor) return drift(area.left - 20, area.right + 20, 1.2, 3, 'wall', pen)
	return (
		drift(area.left - 20, -stepHalfCm - 1, 1.2, 3, 'left', pen) +
		drift(stepHalfCm + 1, area.right + 20, 1.2, 3, 'right', pen)
	)
}

/** What the season leaves on the ground before the wall. */
export function onTheGround({ quarter, door }: Scene, area: Area, pen: Pen): string {
	if (quarter === 'winter') return snow(area, door !== null, pen)
	return quarter === 'autumn' ? leaves(area, pen) : ''
}

/** And on the step: snow swept to its ends, clear before the door. */
export function onTheStep({ quarter, door }: Scene, pen: Pen): string {
	if (quarter !== 'winter' || door === null) return ''
	const [from, y] = [doorCm.width / 2 + doorCm.trim - 1, -doorCm.step + 3.4]
	return (
		drift(-stepHalfCm + 0.6, -from + 6, y, 1.3, 'step', pen) +
		drift(from - 4, stepHalfCm - 0.6, y, 1.2, 'step right', pen)
	)
}
