import { type LengthUnit, length } from '../../format/length'
import { typedLength } from '../../format/typed-length'
import { capital, list } from '../../format/words'
import { isRound, type Vessel } from '../card'
import { inner } from '../inner'
import { soilDepthCm } from '../soil'
import { shapeWords } from '../words'
import type { MeasureName } from './measures'
import type { Sketch } from './sketch'

/** A measure as it was taken: "18.0625 in". */
export const taken = (cm: number, unit: LengthUnit): string => `${typedLength(cm, unit)} ${unit}`

/** "16.4 in across", "34.4 by 6.4 in" */
export function openingWords(vessel: Vessel, unit: LengthUnit): string {
	const { topCm, topDepthCm } = inner(vessel)
	if (isRound(vessel.shape)) return `${length(topCm, unit)} across`
	return `${length(topCm, unit).replace(` ${unit}`, '')} by ${length(topDepthCm, unit)}`
}

const said: readonly (readonly [name: MeasureName & keyof Vessel, says: string])[] = [
	['topCm', 'across at the rim'],
	['topDepthCm', 'front to back at the rim'],
	['bottomCm', 'across at the foot'],
	['bottomDepthCm', 'front to back at the foot'],
	['heightCm', 'high'],
]

/** The drawing in words, for who cannot see it. */
export function sketchWords({ vessel, madeUp, isSound }: Sketch, unit: LengthUnit): string {
	const measures = said.flatMap(([name, says]) => {
		const cm = vessel[name]
		return typeof cm !== 'number' || madeUp.has(name) ? [] : [`${taken(cm, unit)} ${says}`]
	})
	const within = isSound
		? ` Inside, its opening is ${openingWords(vessel, unit)} and its soil ${length(soilDepthCm(vessel), unit)} deep.`
		: ''
	const sizes = measures.length === 0 ? 'not measured yet' : list(measures)
	return `${capital(shapeWords[vessel.shape])}, cut open from the front and seen from above: ${sizes}.${within}`
}
