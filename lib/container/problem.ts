import { isRound, type Vessel } from './card'
import { bodyCm, inner } from './inner'

/** Beyond this a tape was misread: ten metres across, five high. */
const most = { acrossCm: 1000, heightCm: 500 }

type Measure = { readonly name: string; readonly cm: number; readonly most: number; readonly mayBeNothing: boolean }

function measuresOf(vessel: Vessel, sillToGlassCm: number | null): Measure[] {
	const of = (name: string, cm: number | null, limit: number, mayBeNothing = false): Measure[] =>
		cm === null ? [] : [{ name, cm, most: limit, mayBeNothing }]
	return [
		...of('width at the rim', vessel.topCm, most.acrossCm),
		...of('depth at the rim', vessel.topDepthCm, most.acrossCm),
		...of('width at the foot', vessel.bottomCm, most.acrossCm),
		...of('depth at the foot', vessel.bottomDepthCm, most.acrossCm),
		...of('height', vessel.heightCm, most.heightCm),
		...of('thickness of the wall', vessel.wallCm, most.acrossCm, true),
		...of('space from soil to rim', vessel.headspaceCm, most.heightCm, true),
		...of('depth of the soil', vessel.soilDepthCm, most.heightCm),
		...of('height from sill to glass', sillToGlassCm, most.heightCm),
	]
}

function measureProblem({ name, cm, most: limit, mayBeNothing }: Measure): string[] {
	if (!Number.isFinite(cm)) return [`The ${name} is not a number: measure it again.`]
	if (cm < 0) return [`The ${name} cannot be less than nothing.`]
	if (cm === 0 && !mayBeNothing) return [`The ${name} is nothing: measure it.`]
	if (cm > limit) return [`The ${name} is more than any container measures: was it typed in another unit?`]
	return []
}

const when = (is: boolean, says: string): string[] => (is ? [says] : [])

/** A bowl deeper than half of its width would be wider in its belly than at its rim. */
function shapeProblems({ shape, topCm, bottomCm, heightCm }: Vessel): string[] {
	if (shape !== 'bowl') return []
	return [
		...when(heightCm > topCm / 2, 'A bowl is at most half as high as it is wide: call a deeper one a round pot.'),
		...when(bottomCm >= topCm, 'A bowl stands on a foot narrower than its rim.'),
	]
}

function fitProblems(vessel: Vessel): string[] {
	const { topCm, topDepthCm, bottomCm, bottomDepthCm, heightCm } = inner(vessel)
	const isThick = vessel.shape === 'bowl' ? topCm <= 0 : Math.min(topCm, topDepthCm, bottomCm, bottomDepthCm) <= 0
	const body = vessel.shape === 'urn' ? 'bowl of the urn' : 'pot'
	const deep = vessel.soilDepthCm
	return [
		...when(isThick, 'The walls are thicker than the pot: nothing would be left inside.'),
		...when(heightCm <= 0, `The floor is thicker than the ${body} is high.`),
		...when(
			heightCm > 0 && vessel.headspaceCm >= heightCm,
			`The space from soil to rim is deeper than the ${body}: no soil would fit.`,
		),
		...when(deep !== null && deep > bodyCm(vessel), `The soil cannot be deeper than the ${body} is high.`),
		...when(
			isRound(vessel.shape) && (vessel.topDepthCm !== null || vessel.bottomDepthCm !== null),
			'A round vessel has a width and no depth.',
		),
	]
}

/**
 * What is wrong with the measures of a vessel, in sentences; none where it can be computed with. A pot may be wider at
 * its foot than at its rim.
 */
export function problemOf(vessel: Vessel, sillToGlassCm: number | null = null): string[] {
	const measured = measuresOf(vessel, sillToGlassCm).flatMap(measureProblem)
	return measured.length > 0 ? measured : [...fitProblems(vessel), ...shapeProblems(vessel)]
}
