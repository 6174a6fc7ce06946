import { door, doorCm } from '../front/door'
import { lantern } from '../front/lantern'
import { step } from '../front/step'
import { windowOver } from '../front/window'
import { n } from '../pen/n'
import type { Pen } from '../pen/pen'
import { planting } from '../planting/planting'
import type { Scene } from '../scene'
import { brackets } from '../vessel/brackets'
import { vessel } from '../vessel/vessel'
import type { Area, Gap } from '../wall/area'
import { ground } from '../wall/ground'
import { wall } from '../wall/wall'
import { measure } from './measure'
import { pools } from './pool'
import { onTheGround, onTheStep } from './season/season'
import { onGround, onWall } from './shadows'
import { glassOverRimCm, type Stood } from './stood'

function potOf({ pot, body, x, y, which, isHung }: Stood, pen: Pen): string {
	const { back, front } = vessel(body, pen)
	const { behind, over } = planting(pot, body, which, pen)
	const held = isHung ? brackets(body, pen) : ''
	return `<g transform="translate(${n(x)} ${n(y)})">${held}${back}${behind}${front}${over}</g>`
}

const glassY = ({ pot, body, y }: Stood): number => y - body.height - glassOverRimCm(pot)

function windows({ wall: { kind, hex } }: Scene, hung: readonly Stood[], pen: Pen): string {
	if (kind === 'shop glass') return ''
	return hung
		.map((each) => windowOver(each.x, glassY(each), Math.max(40, each.body.top * 2 - 12), kind, hex, pen))
		.join('')
}

function doorway({ wall: { kind, hex }, door: colour }: Scene, pen: Pen): string {
	if (colour === null) return ''
	const lit = pen.light.isLit && kind !== 'shop glass' ? lantern(pen) : ''
	return door(0, kind, hex, colour, pen) + lit
}

const gapsOf = ({ door: colour }: Scene): Gap[] => {
	const half = doorCm.width / 2 + doorCm.trim
	return colour === null ? [] : [{ from: -half, to: half }]
}

/** Wall, door and windows, ground, then the pots, those that stand nearest last. */
export function scenery(scene: Scene, stood: readonly Stood[], area: Area, pen: Pen): string {
	const gaps = gapsOf(scene)
	const hung = stood.filter(({ isHung }) => isHung)
	const sill = Math.max(0, ...hung.map((each) => -glassY(each)))
	const [wallCm, ...rest] = [
		wall(area, scene.wall, gaps, sill, pen),
		windows(scene, hung, pen),
		doorway(scene, pen),
		pools(stood, 'wall', pen),
		stood.map((each) => onWall(each, pen)).join(''),
		ground(area, scene.wall.kind, scene.wall.hex, pen),
		onTheGround(scene, area, pen),
		scene.door === null ? '' : step(0, scene.wall.hex, pen) + onTheStep(scene, pen),
		pools(stood, 'ground', pen),
		stood.map((each) => onGround(each, pen)).join(''),
		stood
			.toSorted((a, b) => a.y - b.y)
			.map((each) => potOf(each, pen))
			.join(''),
		measure(stood, scene.measure, area.left),
	]
	return [wallCm, ...rest].join('')
}
