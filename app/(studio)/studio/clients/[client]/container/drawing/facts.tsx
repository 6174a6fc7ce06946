import type { Limit } from '@/lib/container/card'
import type { Sketch } from '@/lib/container/measured/sketch'
import { openingWords } from '@/lib/container/measured/told'
import { soilCm3, soilDepthCm } from '@/lib/container/soil'
import { mixWhere, weigh } from '@/lib/container/weight'
import { type LengthUnit, length } from '@/lib/format/length'
import { mixVolume } from '@/lib/format/volume'
import { weight } from '@/lib/format/weight'

type Props = {
	readonly sketch: Sketch
	readonly unit: LengthUnit
	readonly vesselKg: number | null
	readonly limit: Limit
}

/** What follows from the measures, once they are all there. */
export function Facts({ sketch: { vessel, wall, isSound }, unit, vesselKg, limit }: Props) {
	const weighed = weigh(vessel, { wall, vesselKg, mix: mixWhere(limit) }, 0)
	const rows: readonly (readonly [name: string, value: string])[] = [
		['Opening, inside', openingWords(vessel, unit)],
		['Soil', `${mixVolume(soilCm3(vessel) / 1000, unit)}, ${length(soilDepthCm(vessel), unit)} deep`],
		['Weight, soil dry', weight(weighed.dryKg, unit)],
		['Weight, soil wet', weight(weighed.wetKg, unit)],
	]
	return (
		<>
			<dl className="grid grid-cols-[auto_1fr] gap-x-6 tabular-nums">
				{rows.map(([name, value]) => (
					<div key={name} className="col-span-2 grid grid-cols-subgrid border-t border-line py-1.5">
						<dt className="text-soft">{name}</dt>
						<dd className="text-end font-semibold">{isSound ? value : '–'}</dd>
					</div>
				))}
			</dl>
			<p className="border-t border-line pt-1.5 text-sm text-soft">
				{weighed.isEstimated
					? 'With nothing planted; the empty vessel by its walls, since it was not weighed.'
					: 'With nothing planted.'}
			</p>
		</>
	)
}
