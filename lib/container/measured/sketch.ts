import type { LengthUnit } from '../../format/length'
import { howToMeasure, readLength } from '../../format/read-length'
import { isRound, type Shape, shapes, type Vessel, type WallMaterial, walls } from '../card'
import { eachMeasure, type Fault, type MeasureName, measureFaults, measureNames } from './measures'
import { usualCm } from './usual'
import { faultsOfMeasured, type Measured, whole } from './whole'

/** What stands in the boxes of a card, by their names. */
export type TypedCard = Readonly<Partial<Record<MeasureName | 'shape' | 'wall', string>>>

export type Sketch = {
	/** Something of this shape that can be drawn, whatever was typed. */
	readonly vessel: Vessel
	readonly wall: WallMaterial
	/** Measures that are still to be taken or wrong: the drawing makes them up. */
	readonly madeUp: ReadonlySet<MeasureName>
	readonly faults: readonly Fault[]
	/** Every measure that it needs is there and none is wrong: it can be computed with. */
	readonly isSound: boolean
}

type Read = Record<MeasureName, number | null>

const readAll = (typed: TypedCard, unit: LengthUnit): Read => eachMeasure((name) => readLength(typed[name] ?? '', unit))

const isFilled = (typed: TypedCard, name: MeasureName) => (typed[name] ?? '').trim() !== ''

const needed = ['topCm', 'bottomCm', 'heightCm'] as const
type Kind = Pick<Measured, 'shape' | 'wall'>

/** What the server would refuse: the vessel as a whole once its three measures are there, until then one by one. */
function faultsIn(read: Read, kind: Kind): readonly Fault[] {
	const { topCm, bottomCm, heightCm, sillToGlassCm, ...rest } = read
	if (topCm === null || bottomCm === null || heightCm === null) return measureFaults(read)
	return faultsOfMeasured({ ...kind, ...rest, topCm, bottomCm, heightCm }, sillToGlassCm)
}

/** The shape to be drawn from what can be used; the rest in the usual proportion to it. */
function drawn(usable: Read, kind: Kind): Vessel {
	const usual = usualCm[kind.shape]
	const known = needed.find((name) => usable[name] !== null) ?? 'topCm'
	const scale = (usable[known] ?? usual[known]) / usual[known]
	const { topCm, topDepthCm, bottomCm, bottomDepthCm, heightCm, wallCm, headspaceCm, soilDepthCm } = usable
	return whole({
		...kind,
		topCm: topCm ?? usual.topCm * scale,
		topDepthCm: topDepthCm ?? (topCm === null ? usual.topDepthCm * scale : null),
		bottomCm: bottomCm ?? usual.bottomCm * ((topCm ?? usual.topCm * scale) / usual.topCm),
		bottomDepthCm,
		heightCm: heightCm ?? usual.heightCm * scale,
		wallCm,
		headspaceCm,
		soilDepthCm,
	})
}

/** The depth of a box follows its width where it was not measured. */
const follows: Readonly<Partial<Record<MeasureName, MeasureName>>> = {
	topDepthCm: 'topCm',
	bottomDepthCm: 'bottomCm',
}

function isMadeUp(name: MeasureName, usable: Read, shape: Shape): boolean {
	if (isRound(shape) && name in follows) return false
	const by = needed.find((each) => each === (follows[name] ?? name))
	return by !== undefined && usable[by] === null && usable[name] === null
}

/** What is typed into a card, read as the server reads it: a vessel to draw, and what is wrong with it. */
export function sketchOf(typed: TypedCard, unit: LengthUnit): Sketch {
	const shape = shapes.find((each) => each === typed.shape) ?? shapes[0]
	const wall = walls.find((each) => each === typed.wall) ?? walls[0]
	const read = readAll(typed, unit)
	const unread = measureNames.filter((name) => isFilled(typed, name) && read[name] === null)
	const wrong = new Set(measureFaults(read).map(({ field }) => field))
	const usable = eachMeasure((name) => (wrong.has(name) ? null : read[name]))
	const faults = [...unread.map((field) => ({ field, says: howToMeasure(unit) })), ...faultsIn(read, { shape, wall })]
	const madeUp = new Set(measureNames.filter((name) => isMadeUp(name, usable, shape)))
	return { vessel: drawn(usable, { shape, wall }), wall, madeUp, faults, isSound: madeUp.size + faults.length === 0 }
}
