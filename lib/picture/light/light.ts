import { converter, formatHex, toGamut } from 'culori'
import { type Hex, hex } from '../../units/hex'
import { remembered } from '../pen/remembered'
import type { Scene } from '../scene'

const toOklab = converter('oklab')
const intoScreen = toGamut('rgb', 'oklch')

/** The hour as colours feel it. */
export type Light = {
	readonly isEvening: boolean
	/** Lights hang in one of the pots, so that walls and door are lit as well. */
	readonly isLit: boolean
	readonly quarter: Scene['quarter']
	/** A colour as it looks at this hour. */
	readonly tone: (colour: Hex) => Hex
	/** The same for what stands among lights. */
	readonly toneAmongLights: (colour: Hex) => Hex
}

/** What is left of lightness and of chroma, and what is added, in OKLab. */
type Fall = {
	readonly l: readonly [base: number, share: number]
	readonly chroma: number
	readonly a: number
	readonly b: number
}

const dusk: Fall = { l: [0.13, 0.47], chroma: 0.7, a: -0.004, b: -0.03 }
const lamplight: Fall = { l: [0.07, 0.7], chroma: 0.84, a: 0.006, b: 0.008 }

function fallen(colour: Hex, { l: [base, share], chroma, a: da, b: db }: Fall): Hex {
	const { l = 0, a = 0, b = 0 } = toOklab(colour) ?? {}
	const toned = { mode: 'oklab', l: base + share * l, a: a * chroma + da, b: b * chroma + db } as const
	return hex(formatHex(intoScreen(toned)))
}

const kept = (fall: Fall) =>
	remembered(
		(colour: Hex) => fallen(colour, fall),
		(colour) => colour,
		2000,
	)

const [atDusk, byLamplight] = [kept(dusk), kept(lamplight)]

export function lightOf({ hour, quarter, pots }: Scene): Light {
	const isEvening = hour === 'evening'
	const same = (colour: Hex) => colour
	return {
		isEvening,
		isLit: isEvening && pots.some(({ lines }) => lines.some(({ form, count }) => form === 'lights' && count > 0)),
		quarter,
		tone: isEvening ? atDusk : same,
		toneAmongLights: isEvening ? byLamplight : same,
	}
}
