import { n } from '../pen/n'
import { rect } from '../pen/path'
import type { Pen } from '../pen/pen'
import { type Area, widthOf } from './area'

/** A pattern laid over the whole wall, its joints reckoned from the foot of the wall upwards. */
export function tiled(area: Area, size: readonly [width: number, height: number], svg: string, { defs }: Pen): string {
	const [width, height] = size
	const id = defs.add(
		(id) =>
			`<pattern id="${id}" width="${n(width)}" height="${n(height)}" patternUnits="userSpaceOnUse">${svg}</pattern>`,
	)
	return rect(area.left, area.top, widthOf(area), -area.top, `url(#${id})`)
}
