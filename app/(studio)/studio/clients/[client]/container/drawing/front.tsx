import type { Vessel } from '@/lib/container/card'
import { hollow, soilWithin } from '@/lib/container/measured/hollow'
import { type Level, outline } from '@/lib/container/outline'

export type Place = { readonly x: number; readonly ground: number; readonly scale: number }

/** A silhouette as the points of both its sides. */
function pointsOf(levels: readonly Level[], { x, ground, scale }: Place): string {
	const at = (side: number) => (level: Level) =>
		`${(x + side * level.halfCm * scale).toFixed(1)},${(ground - level.heightCm * scale).toFixed(1)}`
	return [...levels.map(at(-1)), ...levels.toReversed().map(at(1))].join(' ')
}

type Props = { readonly vessel: Vessel; readonly colour: string; readonly isSound: boolean; readonly place: Place }

/** Cut open from the front: walls in their colour, the soil as high as it lies. */
export function Front({ vessel, colour, isSound, place }: Props) {
	const { x, ground } = place
	return (
		<g>
			<line x1={x - 124} x2={x + 124} y1={ground} y2={ground} className="stroke-edge" strokeWidth="1.5" />
			<polygon
				points={pointsOf(outline(vessel), place)}
				fill={isSound ? colour : 'none'}
				className="stroke-ink"
				strokeWidth="1.5"
				strokeLinejoin="round"
				strokeDasharray={isSound ? undefined : '5 4'}
			/>
			{isSound && (
				<>
					<polygon points={pointsOf(hollow(vessel), place)} className="fill-ground stroke-ink" strokeWidth="0.75" />
					<polygon points={pointsOf(soilWithin(vessel), place)} className="fill-soil" />
				</>
			)}
		</g>
	)
}
