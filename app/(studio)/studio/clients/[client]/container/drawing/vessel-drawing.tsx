import { isRound } from '@/lib/container/card'
import { inner } from '@/lib/container/inner'
import type { MeasureName } from '@/lib/container/measured/measures'
import type { Sketch } from '@/lib/container/measured/sketch'
import { sketchWords, taken } from '@/lib/container/measured/told'
import { type LengthUnit, length } from '@/lib/format/length'
import { Across, Upright } from './dimension'
import { FromAbove } from './from-above'
import { Front } from './front'

type Props = {
	readonly sketch: Sketch
	readonly unit: LengthUnit
	/** As it stands in its box; a grey while that is no colour. */
	readonly colour: string | undefined
}

const grey = '#8a8d8f'

/** In units of the drawing: both views at one scale, as large as fits. */
const [width, middle, rimAt, most] = [380, 128, 44, { across: 220, high: 190, deep: 160 }] as const

function laidOut({ vessel }: Sketch) {
	const { topCm, bottomCm, topDepthCm, bottomDepthCm, heightCm } = vessel
	const across = Math.max(topCm, bottomCm)
	const deep = isRound(vessel.shape) ? across : Math.max(topDepthCm ?? 0, bottomDepthCm ?? 0)
	const scale = Math.min(most.across / across, most.high / heightCm, most.deep / deep)
	const ground = rimAt + heightCm * scale
	const above = ground + 58
	return { scale, ground, across, plan: above + (deep * scale) / 2, height: above + deep * scale + 12 }
}

/** The vessel from the front and from above, to one scale, with what was measured at each. */
export function VesselDrawing({ sketch, unit, colour: typed = '' }: Props) {
	const { vessel, madeUp, isSound } = sketch
	const { scale, ground, plan, height, across } = laidOut(sketch)
	const value = (name: MeasureName & keyof typeof vessel) => {
		const cm = vessel[name]
		return typeof cm === 'number' && !madeUp.has(name) ? taken(cm, unit) : null
	}
	const half = (cm: number) => (cm * scale) / 2
	const [rim, foot] = [half(vessel.topCm), half(vessel.bottomCm)]
	const beside = middle + half(across) + 16
	const isBox = vessel.topDepthCm !== null
	const deep = half(vessel.topDepthCm ?? inner(vessel).topCm)
	const colour = /^#[0-9a-f]{6}$/i.test(typed) ? typed : grey
	const seen = { vessel, colour, isSound }
	return (
		<svg viewBox={`0 0 ${width} ${height}`} role="img" aria-label={sketchWords(sketch, unit)} className="w-full">
			<Front {...seen} place={{ x: middle, ground, scale }} />
			<Across name="Rim" value={value('topCm')} from={middle - rim} to={middle + rim} at={rimAt - 14} labelAt={16} />
			<Across
				name="Foot"
				value={value('bottomCm')}
				from={middle - foot}
				to={middle + foot}
				at={ground + 14}
				labelAt={ground + 34}
			/>
			<Upright name="Height" value={value('heightCm')} from={rimAt} to={ground} at={beside} labelAt={beside + 12} />
			<FromAbove {...seen} x={middle} y={plan} scale={scale} />
			{(isBox || isSound) && (
				<Upright
					name={isBox ? 'Front to back' : 'Opening'}
					value={isBox ? value('topDepthCm') : length(inner(vessel).topCm, unit)}
					from={plan - deep}
					to={plan + deep}
					at={beside}
					labelAt={beside + 12}
				/>
			)}
		</svg>
	)
}
