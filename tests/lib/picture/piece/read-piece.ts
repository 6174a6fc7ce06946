import type { Piece } from '@/lib/picture/piece'
import { type Outline, readPath } from './read-path'

export type Layer = {
	readonly fill: string | null
	readonly stroke: string | null
	readonly penCm: number
	readonly d: string
	/** In cm. */
	readonly outlines: readonly Outline[]
}

const group = /^<g transform="scale\((\d*\.?\d+)\)" fill="none" stroke-linecap="round">(.*)<\/g>$/
const path =
	/<path (?:fill="(#[0-9a-f]{6})"|stroke="(#[0-9a-f]{6})" stroke-width="(\d*\.?\d+)"(?: stroke-linecap="butt")?(?: stroke-dasharray="[\d. ]+")?) d="([^"]*)"\/>/g

/** The layers of a piece, back to front; throws where it is written in any other way than pieces are. */
export function layersOf({ svg }: Piece): Layer[] {
	const [, scale, inside] = group.exec(svg) ?? []
	if (scale === undefined || inside === undefined) throw new Error(`not a piece: ${svg.slice(0, 90)}`)
	const rest = inside.replaceAll(path, '')
	if (rest !== '') throw new Error(`not a layer of a piece: ${rest.slice(0, 90)}`)
	const cm = Number(scale)
	return [...inside.matchAll(path)].map(([, fill, stroke, wide, d = '']) => ({
		fill: fill ?? null,
		stroke: stroke ?? null,
		penCm: Number(wide ?? 0) * cm,
		d,
		outlines: readPath(d).map(({ points, isClosed }) => ({
			points: points.map(([x, y]) => [x * cm, y * cm] as const),
			isClosed,
		})),
	}))
}

export const coloursOf = (piece: Piece): string[] => layersOf(piece).map(({ fill, stroke }) => fill ?? stroke ?? '')

/** From the origin, ink and all. */
export function reachOf(piece: Piece): { up: number; down: number; side: number } {
	const inked = layersOf(piece).flatMap(({ outlines, penCm }) =>
		outlines.flatMap(({ points }) => points.map(([x, y]) => ({ x: Math.abs(x) + penCm / 2, y, pen: penCm / 2 }))),
	)
	return {
		up: Math.max(...inked.map(({ y, pen }) => pen - y)),
		down: Math.max(...inked.map(({ y, pen }) => pen + y)),
		side: Math.max(...inked.map(({ x }) => x)),
	}
}
