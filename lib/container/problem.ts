import { isRound, type Vessel } from './card'
import { bodyCm, inner } from './inner'
import { type Fault, type MeasureName, measureFaults } from './measured/measures'

const when = (is: boolean, field: MeasureName, says: string): Fault[] => (is ? [{ field, says }] : [])

/** A bowl deeper than half of its width would be wider in its belly than at its rim. */
function shapeFaults({ shape, topCm, bottomCm, heightCm }: Vessel): Fault[] {
	if (shape !== 'bowl') return []
	const deep = 'A bowl is at most half as high as it is wide: call a deeper one a round pot.'
	return [
		...when(heightCm > topCm / 2, 'heightCm', deep),
		...when(bottomCm >= topCm, 'bottomCm', 'A bowl stands on a foot narrower than its rim.'),
	]
}

/** Inches that fill a pot to its rim must not be a float's breath short of it: hundredths of a millimetre. */
const left = (cm: number) => Math.round(cm * 1000)

const bodyName = ({ shape }: Vessel) => (shape === 'urn' ? 'bowl of the urn' : 'pot')

function wallFaults(vessel: Vessel): Fault[] {
	const { topCm, topDepthCm, bottomCm, bottomDepthCm, heightCm } = inner(vessel)
	const least = vessel.shape === 'bowl' ? topCm : Math.min(topCm, topDepthCm, bottomCm, bottomDepthCm)
	const thick = 'The walls are thicker than the pot: nothing would be left inside.'
	return [
		...when(left(least) <= 0, 'wallCm', thick),
		...when(left(heightCm) <= 0, 'wallCm', `The floor is thicker than the ${bodyName(vessel)} is high.`),
	]
}

function soilFaults(vessel: Vessel): Fault[] {
	const { heightCm } = inner(vessel)
	const body = bodyName(vessel)
	const deep = vessel.soilDepthCm
	const isFull = left(heightCm) > 0 && left(heightCm - vessel.headspaceCm) <= 0
	return [
		...when(isFull, 'headspaceCm', `The space from soil to rim is deeper than the ${body}: no soil would fit.`),
		...when(
			deep !== null && left(deep - bodyCm(vessel)) > 0,
			'soilDepthCm',
			`The soil cannot be deeper than the ${body} is high.`,
		),
	]
}

const isOdd = ({ shape, topDepthCm, bottomDepthCm }: Vessel) =>
	isRound(shape) && (topDepthCm !== null || bottomDepthCm !== null)

/**
 * What is wrong with the measures of a vessel, each beside its measure; none where it can be computed with. A pot may be
 * wider at its foot than at its rim.
 */
export function faultsOf(vessel: Vessel, sillToGlassCm: number | null = null): Fault[] {
	const measured = measureFaults({ ...vessel, sillToGlassCm })
	if (measured.length > 0) return measured
	const odd = when(isOdd(vessel), 'topDepthCm', 'A round vessel has a width and no depth.')
	return [...wallFaults(vessel), ...soilFaults(vessel), ...odd, ...shapeFaults(vessel)]
}
