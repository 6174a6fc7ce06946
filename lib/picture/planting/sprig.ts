import { n, n2 } from '../pen/n'

/** One piece in its place: where its foot is, how it is turned (degrees, clockwise), how large. */
export type Sprig = {
	readonly id: string
	readonly x: number
	readonly y: number
	readonly turn: number
	readonly across: number
	readonly along: number
	/** Towards the viewer; what is nearer is drawn later. */
	readonly near: number
	/** Drawn over the near rim, not behind it. */
	readonly isOver: boolean
}

export function use({ id, x, y, turn, across, along }: Sprig): string {
	const turned = Math.abs(turn) < 0.5 ? '' : `rotate(${Math.round(turn)})`
	const [sx, sy] = [n2(across), n2(along)]
	const sized = sx === '1' && sy === '1' ? '' : sx === sy ? `scale(${sx})` : `scale(${sx} ${sy})`
	return `<use href="#${id}" transform="translate(${n(x)} ${n(y)})${turned}${sized}"/>`
}

export const byNearness = (a: Sprig, b: Sprig): number => a.near - b.near
