import { isRound, type Vessel } from '@/lib/container/card'
import { inner } from '@/lib/container/inner'

type Seen = { readonly x: number; readonly y: number; readonly scale: number }
type Ring = Seen & { readonly across: number; readonly deep: number; readonly isRound: boolean }

/** Marks that a ring of the vessel is drawn with. */
type Marks = { readonly className: string; readonly fill?: string; readonly strokeDasharray?: string | undefined }

function Ring({ x, y, scale, across, deep, isRound: round, ...marks }: Ring & Marks) {
	const [width, height] = [across * scale, deep * scale]
	return round ? (
		<circle cx={x} cy={y} r={width / 2} strokeWidth="1.5" {...marks} />
	) : (
		<rect x={x - width / 2} y={y - height / 2} width={width} height={height} strokeWidth="1.5" {...marks} />
	)
}

type Props = Seen & { readonly vessel: Vessel; readonly colour: string; readonly isSound: boolean }

/** Seen from above: the rim in its colour, the opening within it; a foot that is wider shows round it. */
export function FromAbove({ vessel, colour, isSound, ...at }: Props) {
	const { shape, topCm, bottomCm } = vessel
	const seen = { ...at, isRound: isRound(shape) }
	const deep = vessel.topDepthCm ?? topCm
	const { topCm: opening, topDepthCm } = inner(vessel)
	const isWider = bottomCm > topCm
	return (
		<g>
			{isWider && (
				<Ring {...seen} across={bottomCm} deep={vessel.bottomDepthCm ?? bottomCm} className="fill-none stroke-edge" />
			)}
			<Ring
				{...seen}
				across={topCm}
				deep={deep}
				className="stroke-ink"
				fill={isSound ? colour : 'none'}
				strokeDasharray={isSound ? undefined : '5 4'}
			/>
			{isSound && <Ring {...seen} across={opening} deep={topDepthCm} className="fill-soil stroke-ink" />}
		</g>
	)
}
