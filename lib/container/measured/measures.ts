/** The measures of a container's card by which it is drawn and computed. */
export const measureNames = [
	'topCm',
	'topDepthCm',
	'bottomCm',
	'bottomDepthCm',
	'heightCm',
	'wallCm',
	'headspaceCm',
	'soilDepthCm',
	'sillToGlassCm',
] as const
export type MeasureName = (typeof measureNames)[number]

/** What is wrong, and with which measure. */
export type Fault = { readonly field: MeasureName; readonly says: string }

/** The same for every measure. */
export const eachMeasure = <T>(of: (name: MeasureName) => T): Record<MeasureName, T> => ({
	topCm: of('topCm'),
	topDepthCm: of('topDepthCm'),
	bottomCm: of('bottomCm'),
	bottomDepthCm: of('bottomDepthCm'),
	heightCm: of('heightCm'),
	wallCm: of('wallCm'),
	headspaceCm: of('headspaceCm'),
	soilDepthCm: of('soilDepthCm'),
	sillToGlassCm: of('sillToGlassCm'),
})

type Bounds = { readonly name: string; readonly least: number; readonly most: number }

/** Outside of these, in cm, a tape was misread. */
const bounds: Readonly<Record<MeasureName, Bounds>> = {
	topCm: { name: 'width at the rim', least: 5, most: 1000 },
	topDepthCm: { name: 'depth at the rim', least: 5, most: 1000 },
	bottomCm: { name: 'width at the foot', least: 3, most: 1000 },
	bottomDepthCm: { name: 'depth at the foot', least: 3, most: 1000 },
	heightCm: { name: 'height', least: 5, most: 500 },
	wallCm: { name: 'thickness of the wall', least: 0, most: 20 },
	headspaceCm: { name: 'space from soil to rim', least: 0, most: 50 },
	soilDepthCm: { name: 'depth of the soil', least: 1, most: 500 },
	sillToGlassCm: { name: 'height from sill to glass', least: 1, most: 300 },
}

/** What is wrong with a measure by itself; null when nothing is. */
function wrongWith({ name, least, most }: Bounds, cm: number): string | null {
	if (!Number.isFinite(cm)) return `The ${name} is not a number: measure it again.`
	if (cm < 0) return `The ${name} cannot be less than nothing.`
	if (cm === 0 && least > 0) return `The ${name} is nothing: measure it.`
	if (cm < least) return `The ${name} is less than any container measures: was it typed in another unit?`
	return cm > most ? `The ${name} is more than any container measures: was it typed in another unit?` : null
}

export type Measures = { readonly [Name in MeasureName]?: number | null | undefined }

/** What is wrong with measures one by one; nothing with those that were not taken. */
export const measureFaults = (of: Measures): Fault[] =>
	measureNames.flatMap((field) => {
		const cm = of[field] ?? null
		const says = cm === null ? null : wrongWith(bounds[field], cm)
		return says === null ? [] : [{ field, says }]
	})
