import { clamp } from './pen/n'
import type { Scene, SceneLine } from './scene'

/** A measure that can be drawn; null for one that nobody took or that cannot be. */
const sound = (cm: number | null, most: number): number | null =>
	cm === null || !Number.isFinite(cm) || cm <= 0 ? null : clamp(cm, 0.5, most)

const soundLine = (line: SceneLine): SceneLine => ({
	...line,
	count: Number.isFinite(line.count) ? clamp(line.count, 0, 9999) : 0,
	lengthCm: sound(line.lengthCm, 400),
	acrossCm: sound(line.acrossCm, 200),
})

/** The scene with measures that can be drawn: cards may be half filled in, and tapes misread. */
export const soundScene = (scene: Scene): Scene => ({
	...scene,
	pots: scene.pots.map((pot) => ({ ...pot, lines: pot.lines.map(soundLine) })),
})
