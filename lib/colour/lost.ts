import type { WallKind } from '../container/site'
import { capital, list } from '../format/words'
import { type Finding, finding } from '../recipe/check/finding'
import type { Planned } from '../recipe/planned'
import type { Hex } from '../units/hex'
import { difference } from './difference'
import { isGreen, isSeen } from './is-seen'
import { oklchOf } from './name-of'

/** ΔE00 under which a thing is lost against what lies behind it (common practice, no published source). */
export const lostUnder = 15

/** What stands behind the containers of a place. */
export type Behind = {
	readonly wall: { readonly kind: WallKind; readonly hex: Hex }
	readonly door: Hex | null
}

type Ground = { readonly key: string; readonly called: string; readonly hex: Hex }

function groundsOf({ wall, door }: Behind): Ground[] {
	const called = wall.kind === 'shop glass' ? 'the shop glass' : `the ${wall.kind}`
	const back = { key: 'wall', called, hex: wall.hex }
	return door === null ? [back] : [back, { key: 'door', called: 'the door', hex: door }]
}

const isLost = (a: Hex, b: Hex): boolean => difference(a, b) < lostUnder

/** Which way there is more room to stand out from a colour. */
const other = (hex: Hex): string => (oklchOf(hex).l < 0.6 ? 'a lighter one' : 'a darker one')

function againstGround({ material: { id, name, hex } }: Planned, ground: Ground): Finding {
	const clear = ground.key === 'door' ? ', or stand the container clear of the door' : ''
	const says = `${capital(name)} would be lost against ${ground.called}: their colours are too near each other.`
	return finding(`lost/${id}/${ground.key}`, 'look again', says, `Take ${other(hex)} or another colour${clear}.`)
}

function inGreens({ material: { id, name, hex } }: Planned, greens: readonly Planned[]): Finding {
	const among = list(greens.map(({ material: green }) => `the ${green.name}`))
	const says = `${capital(name)} would be lost in ${among}: their colours are too near each other.`
	return finding(`lost/${id}/greens`, 'look again', says, `Take ${other(hex)} or another colour, or other greens.`)
}

/** Each material once in each role, as far as one sees it by day. */
function seen(lines: readonly Planned[]): Planned[] {
	const shown = lines.filter(({ material, role, count }) => count > 0 && role !== 'mechanics' && isSeen(material))
	return [...new Map(shown.map((line) => [`${line.material.id} ${line.role}`, line])).values()]
}

/**
 * Thrillers that hardly differ from the wall, its glass or the door behind them, and accents that hardly differ from a
 * green of the same recipe (CIEDE2000 under `lostUnder`). One finding for each thing and what it is lost in.
 */
export function lost(lines: readonly Planned[], behind: Behind): Finding[] {
	const shown = seen(lines)
	const greens = shown.filter(
		({ material: { piece, hex }, role }) => (role === 'filler' || role === 'spiller') && isGreen({ piece, role, hex }),
	)
	const grounds = groundsOf(behind)
	return shown.flatMap((line) => {
		const { hex } = line.material
		if (line.role === 'thriller')
			return grounds.filter((ground) => isLost(hex, ground.hex)).map((ground) => againstGround(line, ground))
		if (line.role !== 'accent') return []
		const near = greens.filter(({ material }) => isLost(hex, material.hex))
		return near.length === 0 ? [] : [inGreens(line, near)]
	})
}
