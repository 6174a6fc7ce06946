import { doorCm } from '../front/door'
import type { Area } from '../wall/area'
import type { Stood } from './stood'

/** The paper: width over height; the whole place, or one pot near by. */
export type Frame = { readonly ratio: number; readonly zoom?: 'place' | 'pot' }

const groundCm = 30
const sideCm = 26

type Box = { readonly left: number; readonly right: number; readonly top: number; readonly bottom: number }

const boxOf = ({ x, y, elbow, body, tip, isHung }: Stood): Box => ({
	left: x - elbow,
	right: x + elbow,
	top: y - body.height - Math.max(tip, isHung ? 60 : 0),
	bottom: isHung ? groundCm * 0.6 : y + 12,
})

const around = (boxes: readonly Box[], hasDoor: boolean): Box => ({
	left: Math.min(...boxes.map(({ left }) => left), hasDoor ? -doorCm.width / 2 - doorCm.trim - 14 : 20),
	right: Math.max(...boxes.map(({ right }) => right), hasDoor ? doorCm.width / 2 + doorCm.trim + 14 : -20),
	top: Math.min(...boxes.map(({ top }) => top), -120),
	bottom: Math.max(...boxes.map(({ bottom }) => bottom), groundCm),
})

/** Widened or heightened to the ratio: to the sides evenly, upwards more than downwards. */
function fitted({ left, right, top, bottom }: Box, ratio: number): Area {
	const [width, height] = [right - left, bottom - top]
	if (width / height < ratio) {
		const more = height * ratio - width
		return { left: left - more / 2, right: right + more / 2, top, bottom }
	}
	const more = width / ratio - height
	const below = Math.min(more * 0.12, 40)
	return { left, right, top: top - more + below, bottom: bottom + below }
}

const near = ({ left, right, top, bottom }: Box): Box => ({
	left: left - (right - left) * 0.12,
	right: right + (right - left) * 0.12,
	top: top + (top - bottom) * 0.09,
	bottom: bottom + 4,
})

const sound = (ratio: number): number => (Number.isFinite(ratio) ? Math.min(8, Math.max(0.2, ratio)) : 1.6)

/** What the paper shows of a place. */
export function frameOf(stood: readonly Stood[], hasDoor: boolean, { ratio, zoom = 'place' }: Frame): Area {
	const boxes = stood.map(boxOf)
	const [first] = boxes
	if (zoom === 'pot' && first !== undefined) return fitted(near(first), sound(ratio))
	const { left, right, top, bottom } = around(boxes, hasDoor)
	const side = ratio < 1.4 ? sideCm * 0.4 : sideCm
	return fitted({ left: left - side, right: right + side, top: top - 18, bottom }, sound(ratio))
}
