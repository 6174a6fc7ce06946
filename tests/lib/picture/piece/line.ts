import { diceOf } from '@/lib/picture/pen/dice-of'
import type { Piece } from '@/lib/picture/piece'
import { piecesOf } from '@/lib/picture/piece/pieces-of'
import type { SceneLine } from '@/lib/picture/scene'
import type { Form } from '@/lib/recipe/look'
import { type Hex, hex } from '@/lib/units/hex'

type Look = readonly [colour: string, second: string | null, lengthCm: number | null, acrossCm: number | null]

/** A material of the trade for every form that is seen; measures are common practice, no published source. */
export const looks: Readonly<Record<Exclude<Form, 'unseen'>, Look>> = {
	'straight stems': ['#8f2c2f', null, 107, 2],
	'twisting stems': ['#8c7147', null, 118, 22],
	'arching stems': ['#6b5241', '#93a698', 71, null],
	logs: ['#e6dfd2', '#c79a63', 46, 9],
	'evergreen top': ['#3d6147', null, 91, 43],
	grass: ['#9a6b3f', '#d9d6a0', 45, 48],
	'sword leaves': ['#6b3a44', '#d8c7a0', 61, 52],
	'flower spike': ['#5b4a9a', '#4e6a45', 47, 28],
	'flat fan': ['#566b3d', null, 50, 26],
	'long needle': ['#4f7350', null, 44, 27],
	'short needle': ['#3d6143', null, 49, 24],
	'scale leaf': ['#5c7076', '#3d4d66', 40, 21],
	'broad leaf': ['#4a4a2c', '#7a5534', 42, 31],
	'small leaf': ['#6f8460', '#d9dcae', 38, 20],
	trailing: ['#4f6b45', '#e2e0c0', 39, 23],
	berries: ['#b02430', '#5d5148', 60, 18],
	cone: ['#6d5640', null, 14, 8],
	pod: ['#7a6248', null, 33, 10],
	'seed head': ['#8a6a9a', '#a99a78', 55, 12],
	plume: ['#d9c8a4', '#a9895a', 77, 13],
	globe: ['#b4643a', '#c9c4b8', null, 7],
	cluster: ['#bb9346', '#24365a', 34, 17],
	ribbon: ['#a5512b', '#e9e2d2', 32, 25],
	pumpkin: ['#c9702c', '#6d7a3c', 15, 19],
	'round flowers': ['#8f4a28', '#4c6b47', 36, 41],
	'daisy flowers': ['#f2efe6', '#587a4b', 29, 35],
	'bulb flowers': ['#c8344a', '#7f9a86', 37, 22],
	rosette: ['#8a5a80', '#5d7362', 24, 29],
	foliage: ['#5c2b38', '#2f1a22', 26, 32],
	fern: ['#5c7f45', null, 41, 56],
	lights: ['#f3d9a0', '#3a4034', null, null],
}

export type SeenForm = keyof typeof looks

const isForm = (form: string): form is SeenForm => Object.hasOwn(looks, form)

export const seenForms: readonly SeenForm[] = Object.keys(looks).filter(isForm)

export function lineOf(form: Form, over: Partial<SceneLine> = {}): SceneLine {
	const [colour, second, lengthCm, acrossCm] = form === 'unseen' ? (['#808080', null, 3, 4] as const) : looks[form]
	const secondHex: Hex | null = second === null ? null : hex(second)
	return {
		form,
		hex: hex(colour),
		secondHex,
		lengthCm,
		acrossCm,
		name: `some ${form}`,
		role: 'filler',
		count: 5,
		...over,
	}
}

export const drawnFrom = (line: SceneLine, seed = 'a seed'): readonly Piece[] => piecesOf(line, diceOf(seed))
