import type { Limit } from '../../../container/card'
import { mixWhere, weigh } from '../../../container/weight'
import { weight as inWords } from '../../../format/weight'
import { contentsKg } from '../../planned'
import { finding } from '../finding'
import type { Check } from '../setting'

const hangs: ReadonlySet<Limit> = new Set(['bracket', 'railing'])

/** A full and wet container where somebody has to say what may stand there. */
export const weight: Check = (lines, { pot, lengths }) => {
	if (pot.limitedWeight === 'none') return []
	const { wall, vesselKg, limitedWeight } = pot
	const mix = mixWhere(limitedWeight)
	const { wetKg, isEstimated } = weigh(pot, { wall, vesselKg, mix }, contentsKg(lines))
	const estimate = isEstimated ? ', its own weight estimated from its walls' : ''
	const where = hangs.has(limitedWeight) ? `hangs on a ${limitedWeight}` : `stands on a ${limitedWeight}`
	const says = `Full and wet it weighs about ${inWords(wetKg, lengths)}${estimate}, and it ${where}.`
	const mend =
		'Have a licensed engineer say what may be put there; a false bottom and a lighter vessel take weight off.'
	return [finding('weight', 'look again', says, mend)]
}
