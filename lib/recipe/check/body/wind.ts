import { length } from '../../../format/length'
import { capital } from '../../../format/words'
import { standingCm } from '../../height'
import { finding } from '../finding'
import type { Check } from '../setting'

/** What the wind takes hold of, in cm above the rim (common practice, no published source). */
const tallCm = 45

/** Tall stems in the wind; the worse where they rise higher above the rim than the pot below it. */
export const wind: Check = (lines, { pot, lengths }) => {
	if (!pot.isWindy) return []
	const [tallest] = lines
		.filter(({ role }) => role === 'thriller')
		.map(({ material }) => ({ name: material.name, cm: standingCm(material, pot) ?? 0 }))
		.toSorted((a, b) => b.cm - a.cm)
	if (tallest === undefined || tallest.cm <= tallCm) return []
	const isTopHeavy = tallest.cm > pot.heightCm
	const than = isTopHeavy ? ', more than the pot is high' : ''
	const says = `It stands in the wind, and ${tallest.name} will rise ${length(tallest.cm, lengths)} above the rim${than}.`
	const mend = `Put ballast in the bottom and tie the stems. ${capital(tallest.name)} could also be cut lower.`
	return [finding('wind', isTopHeavy ? 'look again' : 'caution', says, mend)]
}
