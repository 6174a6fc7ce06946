import { named } from '../planned'
import { finding } from './finding'
import type { Check } from './setting'

/** One kind of greens alone (two at least: common practice). What trails over the rim counts as a kind. */
export const oneGreen: Check = (lines) => {
	const greens = lines.filter(({ material }) => material.piece === 'green')
	if (new Set(greens.map(({ material }) => material.id)).size !== 1) return []
	const says = `All its greens are ${named(greens)}: one kind alone looks flat, and if it browns, all of it browns.`
	return [finding('one green', 'caution', says, 'Add a second kind, of another texture.')]
}
