import { stepHalfCm } from '../front/step'
import type { Light } from '../light/light'
import type { Scene } from '../scene'
import { footY, hungFootY, type Sized, type Stood, sizedOf } from './stood'

const apartCm = 16

const put = (sized: Sized, x: number): Stood => ({
	...sized,
	x,
	y: sized.isHung ? hungFootY(sized.body) : footY(sized.pot, sized.body),
})

/** Side by side about the middle, in the order in which they were named. */
function inARow(all: readonly Sized[]): Stood[] {
	const wide = all.reduce((sum, { elbow }) => sum + elbow * 2 + apartCm, -apartCm)
	let from = -wide / 2
	return all.map((sized) => {
		const x = from + sized.elbow
		from += sized.elbow * 2 + apartCm
		return put(sized, x)
	})
}

/** Left and right of a door by turns, from the door outwards; boxes under windows outermost. */
function aboutADoor(all: readonly Sized[]): Stood[] {
	const edge = { left: stepHalfCm + 3, right: stepHalfCm + 3 }
	const order = [...all.filter(({ isHung }) => !isHung), ...all.filter(({ isHung }) => isHung)]
	const placed = order.map((sized, index) => {
		const side = index % 2 === 0 ? 'left' : 'right'
		const x = edge[side] + sized.elbow
		edge[side] = x + sized.elbow + apartCm
		return put(sized, side === 'left' ? -x : x)
	})
	return placed.toSorted((a, b) => a.x - b.x)
}

/** Every pot of a place where it stands; the door, if there is one, at x = 0. None over another. */
export function stand({ pots, door }: Scene, { tone }: Light): Stood[] {
	const sized = pots.map((pot, which) => sizedOf(pot, which, tone))
	return door === null ? inARow(sized) : aboutADoor(sized)
}
