import { isRound, type Shape, type Vessel } from '@/lib/container/card'
import { usualCm } from '@/lib/container/measured/usual'
import { type Measured, whole } from '@/lib/container/measured/whole'
import { outline } from '@/lib/container/outline'

/** In units of the drawing: it is as large as fits, seen from the front and a little from above. */
const [width, height, ground] = [64, 52, 48] as const
type Open = Pick<Measured, 'wall' | 'wallCm' | 'headspaceCm' | 'soilDepthCm'>
const open: Open = { wall: 'resin', wallCm: null, headspaceCm: null, soilDepthCm: null }

const at = (x: number, y: number) => `${x.toFixed(1)},${y.toFixed(1)}`

function laidOut(vessel: Vessel) {
	const deep = vessel.topDepthCm ?? 0
	const rim = isRound(vessel.shape) ? vessel.topCm * 0.08 : deep * 0.3
	const wide = Math.max(vessel.topCm, vessel.bottomCm) + deep * 0.3
	const scale = Math.min((width - 6) / wide, (ground - 4) / (vessel.heightCm + rim))
	const back = deep * 0.3 * scale
	return { scale, back, x: (width - back) / 2, rim: ground - vessel.heightCm * scale }
}

/** The top and the right side of what has four sides. */
function Sides({ vessel }: { readonly vessel: Vessel }) {
	const { scale, back, x, rim } = laidOut(vessel)
	const [top, foot] = [(vessel.topCm * scale) / 2, (vessel.bottomCm * scale) / 2]
	const lid = [at(x - top, rim), at(x - top + back, rim - back), at(x + top + back, rim - back), at(x + top, rim)]
	const side = [
		at(x + top, rim),
		at(x + top + back, rim - back),
		at(x + foot + back, ground - back),
		at(x + foot, ground),
	]
	return (
		<>
			<polygon points={lid.join(' ')} />
			<polygon points={side.join(' ')} />
		</>
	)
}

/** What tells a window box from a trough: the glass and the sill above it. */
const Window = () => <path d="M8 3V22M56 3V22M32 3V22M4 22H60" fill="none" />

/** A vessel of this shape in its usual proportions. */
export function ShapePicture({ shape }: { readonly shape: Shape }) {
	const vessel = whole({ shape, ...usualCm[shape], ...open })
	const { scale, x, rim } = laidOut(vessel)
	const levels = outline(vessel)
	const side = (sign: number) => (level: (typeof levels)[number]) =>
		at(x + sign * level.halfCm * scale, ground - level.heightCm * scale)
	const front = [...levels.map(side(-1)), ...levels.toReversed().map(side(1))].join(' ')
	const half = (vessel.topCm * scale) / 2
	return (
		<svg
			viewBox={`0 0 ${width} ${height}`}
			width={width}
			height={height}
			aria-hidden="true"
			className="fill-none stroke-current"
			strokeWidth="1.6"
			strokeLinejoin="round"
		>
			{shape === 'window box' && <Window />}
			<polygon points={front} />
			{isRound(shape) ? <ellipse cx={x} cy={rim} rx={half} ry={half * 0.16} /> : <Sides vessel={vessel} />}
		</svg>
	)
}
