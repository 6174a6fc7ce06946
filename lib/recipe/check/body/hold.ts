import { soilDepthCm } from '../../../container/soil'
import { length } from '../../../format/length'
import { holdCm, leastHoldCm, standingCm } from '../../height'
import { named } from '../../planned'
import { finding } from '../finding'
import type { Check } from '../setting'

/** Stems that the soil is too shallow to hold. A plant holds by its roots. */
export const hold: Check = (lines, { pot, lengths }) => {
	const deep = soilDepthCm(pot)
	const loose = lines.filter(({ role, material }) => {
		const standing = standingCm(material, pot)
		if (role !== 'thriller' || material.kind === 'live' || standing === null) return false
		return holdCm(standing + pot.headspaceCm, deep) < leastHoldCm
	})
	if (loose.length === 0) return []
	const says = `The soil is ${length(deep, lengths)} deep: too little to hold ${named(loose)}, which should stand ${length(leastHoldCm, lengths)} in it.`
	return [finding('hold', 'look again', says, 'Set a frame or an anchor, or shorten what stands tall.')]
}
