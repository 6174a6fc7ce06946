import { lightOf } from './light/light'
import { newDefs } from './pen/defs'
import { n } from './pen/n'
import type { Pen } from './pen/pen'
import { type Frame, frameOf } from './place/frame'
import { scenery } from './place/scenery'
import { stand } from './place/stand'
import type { Scene } from './scene'
import { soundScene } from './sound'
import { widthOf } from './wall/area'

/**
 * The containers of a place before its wall, to scale: a whole SVG document, 1 cm a unit, the same for the same scene.
 * It holds no script, no link to elsewhere and no words but the figures of a measure that was asked for.
 * `frame.ratio` is width over height. Counts are true as far as they face the viewer: of a pot seen all round three
 * quarters of what hangs and not quite half of what is set upon it, and of any line no more than can be told apart.
 */
export function picture(of: Scene, frame: Frame): string {
	const scene = soundScene(of)
	const light = lightOf(scene)
	const pen: Pen = { defs: newDefs(), light }
	const stood = stand(scene, light)
	const area = frameOf(stood, scene.door !== null, frame)
	const drawn = scenery(scene, stood, area, pen)
	const box = [area.left, area.top, widthOf(area), area.bottom - area.top].map(n).join(' ')
	return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="${box}" preserveAspectRatio="xMidYMax slice">${pen.defs.svg()}${drawn}</svg>`
}
