import type { Piece } from '../../piece'
import { extent } from './extent'
import type { Layer } from './layer'
import { pathData } from './path-data'

const gridsCm = [0.01, 0.02, 0.05, 0.1, 0.2, 0.5] as const

/** The finest grid on which a piece is at most 600 steps across: so a cone bears to be looked at as closely as a branch. */
const gridFor = (reachCm: number): number => gridsCm.find((grid) => reachCm / grid <= 600) ?? 1

const short = (number: number): string => `${Math.round(number * 100) / 100}`.replace(/^0\./, '.')

function path({ colour, penCm, dashCm, shapes }: Layer, stepCm: number): string {
	const d = pathData(shapes, stepCm)
	if (penCm === null) return `<path fill="${colour}" d="${d}"/>`
	const lifts = dashCm === null ? '' : ` stroke-dasharray="${dashCm.map((cm) => short(cm / stepCm)).join(' ')}"`
	const ends = dashCm === null || dashCm[0] === 0 ? '' : ' stroke-linecap="butt"'
	return `<path stroke="${colour}" stroke-width="${short(penCm / stepCm)}"${ends}${lifts} d="${d}"/>`
}

type How = {
	readonly habit?: 'upright' | 'leans' | 'hangs'
	/** As high as the whole shall be; as it is drawn where it is not given. */
	readonly fitCm?: number
}

/** The layers one over the other, the first at the back, as a piece. */
export function drawn(layers: readonly Layer[], { habit = 'upright', fitCm }: How = {}): Piece {
	const seen = layers.filter(({ shapes }) => shapes.length > 0)
	const { upCm, downCm, sideCm } = extent(seen)
	const drawnCm = habit === 'hangs' ? downCm : upCm
	const share = fitCm === undefined ? 1 : fitCm / drawnCm
	const [heightCm, widthCm] = [drawnCm * share, sideCm * 2 * share]
	const grid = gridFor(Math.max(heightCm, widthCm))
	const inside = seen.map((layer) => path(layer, grid / share)).join('')
	return {
		svg: `<g transform="scale(${short(grid)})" fill="none" stroke-linecap="round">${inside}</g>`,
		heightCm,
		widthCm,
		hangs: habit === 'hangs',
		leans: habit === 'leans',
	}
}
