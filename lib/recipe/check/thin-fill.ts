import { innerOpeningCm2 } from '../../container/soil'
import { visible } from '../../container/visible'
import { weight as inWords } from '../../format/weight'
import { lineKg } from '../planned'
import { finding } from './finding'
import type { Check, SetPot } from './setting'

/** Mixed greens that fill an opening, in kg per 1,000 cm² (common practice, no published source). */
const fullKgPer1000Cm2 = 2.4
/** Below four fifths of that one sees it; below half of it the soil shows. */
const [thin, bare] = [0.8, 0.5]

/** Greens in kg that fill what is seen of a pot. */
export const fullKg = (pot: SetPot): number =>
	((fullKgPer1000Cm2 * innerOpeningCm2(pot)) / 1000) * visible(pot, pot.stands).greens

/** Too few greens for the opening, by weight, whatever the recipe says. Silent where a weight is not known. */
export const thinFill: Check = (lines, { pot, lengths }) => {
	const weights = lines.filter(({ material }) => material.piece === 'green').map(lineKg)
	if (weights.length === 0 || weights.includes(null)) return []
	const kg = weights.reduce((sum: number, each) => sum + (each ?? 0), 0)
	const full = fullKg(pot)
	if (kg >= thin * full) return []
	const says = `The greens weigh ${inWords(kg, lengths)}, where about ${inWords(full, lengths)} fill a pot of this opening: it would look thin.`
	const mend = `Add about ${inWords(full - kg, lengths)} of greens, or take fuller ones.`
	return [finding('thin', kg < bare * full ? 'look again' : 'caution', says, mend)]
}
