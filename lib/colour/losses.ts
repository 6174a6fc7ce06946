import type { WallKind } from '../container/site'
import { list } from '../format/words'
import type { Planned } from '../recipe/planned'
import type { Hex } from '../units/hex'
import { difference } from './difference'
import { isGreen, isSeen } from './is-seen'

/** ΔE00 under which a thing is lost against what lies behind it (common practice, no published source). */
export const lostUnder = 15

/** What stands behind the containers of a place. */
export type Behind = {
	readonly wall: { readonly kind: WallKind; readonly hex: Hex }
	readonly door: Hex | null
}

/** A thing of a recipe, and what it is lost in: "the clapboard", "the cedar and the noble fir". */
export type Loss = {
	readonly material: Planned['material']
	readonly in: 'wall' | 'door' | 'greens'
	readonly called: string
}

type Ground = { readonly in: 'wall' | 'door'; readonly called: string; readonly hex: Hex }

function groundsOf({ wall, door }: Behind): Ground[] {
	const called = wall.kind === 'shop glass' ? 'the shop glass' : `the ${wall.kind}`
	const back: Ground = { in: 'wall', called, hex: wall.hex }
	return door === null ? [back] : [back, { in: 'door', called: 'the door', hex: door }]
}

/** Each material once in each role, as far as one sees it by day. */
function seen(lines: readonly Planned[]): Planned[] {
	const shown = lines.filter(({ material, role, count }) => count > 0 && role !== 'mechanics' && isSeen(material))
	return [...new Map(shown.map((line) => [`${line.material.id} ${line.role}`, line])).values()]
}

/**
 * Thrillers that hardly differ from the wall, its glass or the door behind them, and accents that hardly differ from a
 * green of the same recipe (CIEDE2000 under `lostUnder`), once for each thing and what it is lost in. `as` is how the
 * eyes that look see a colour: others than most people's, where it is given.
 */
export function losses(lines: readonly Planned[], behind: Behind, as: (of: Hex) => Hex = (of) => of): Loss[] {
	const shown = seen(lines)
	const isLost = (a: Hex, b: Hex): boolean => difference(as(a), as(b)) < lostUnder
	const greens = shown.filter(
		({ material: { piece, hex }, role }) => (role === 'filler' || role === 'spiller') && isGreen({ piece, role, hex }),
	)
	return shown.flatMap(({ material, role }): Loss[] => {
		if (role === 'thriller')
			return groundsOf(behind)
				.filter(({ hex }) => isLost(material.hex, hex))
				.map(({ in: ground, called }) => ({ material, in: ground, called }))
		if (role !== 'accent') return []
		const near = greens.filter((green) => isLost(material.hex, green.material.hex))
		const among = list(near.map((green) => `the ${green.material.name}`))
		return near.length === 0 ? [] : [{ material, in: 'greens', called: among }]
	})
}
