import { type LengthUnit, length } from '../format/length'
import { isRound, type Vessel } from './card'

type Measured = Pick<Vessel, 'shape' | 'topCm' | 'topDepthCm' | 'heightCm'>

/** "round planter, 18 in across and 20 in high", in the studio's units */
export function vesselWords({ shape, topCm, topDepthCm, heightCm }: Measured, unit: LengthUnit): string {
	const of = (cm: number) => length(cm, unit)
	const across = isRound(shape) ? `${of(topCm)} across` : `${of(topCm)} by ${of(topDepthCm ?? topCm)}`
	return `${shape}, ${across} and ${of(heightCm)} high`
}
