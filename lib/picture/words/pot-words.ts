import { nameOf } from '../../colour/name-of'
import type { Shape } from '../../container/card'
import { cmPerInch, type LengthUnit, length } from '../../format/length'
import { capital, list } from '../../format/words'
import type { Role } from '../../recipe/material'
import { aboveRimCm } from '../planting/above-rim'
import { habitOf } from '../planting/habit'
import type { SceneLine, ScenePot } from '../scene'
import { bodyOf, soundPot } from '../vessel/body'

const nouns: Record<Shape, readonly [one: string, several: string]> = {
	round: ['round pot', 'round pots'],
	square: ['square planter', 'square planters'],
	rectangular: ['rectangular planter', 'rectangular planters'],
	bowl: ['low bowl', 'low bowls'],
	trough: ['trough', 'troughs'],
	'window box': ['window box', 'window boxes'],
	urn: ['urn', 'urns'],
	column: ['tall column', 'tall columns'],
}

/** To a whole inch or centimetre: as one would say it. */
const whole = (cm: number, unit: LengthUnit): string => {
	const one = unit === 'cm' ? 1 : cmPerInch
	return length(Math.round(cm / one) * one, unit)
}

/** "a round pot of resin, charcoal, 18 in across and 20 in high" */
export function vesselWords({ vessel, madeOf, colour }: ScenePot, isOne: boolean, unit: LengthUnit): string {
	const { top, height } = bodyOf({ vessel, madeOf, colour })
	const [one, several] = nouns[vessel.shape]
	const article = /^[aeiou]/.test(one) ? 'an' : 'a'
	const noun = isOne ? `${article} ${one}` : several
	return `${noun} of ${madeOf}, ${nameOf(colour)}, ${whole(top * 2, unit)} across and ${whole(height, unit)} high`
}

/** Where lines of a role are, as one would tell it over the telephone. */
const places: readonly (readonly [role: Role, where: string])[] = [
	['thriller', 'up the middle'],
	['filler', 'filling it out'],
	['spiller', 'over the rim'],
	['accent', 'set among them'],
]

/** What is seen: fixings are not. */
const isSeen = (line: SceneLine): boolean => line.role !== 'mechanics' && habitOf(line) !== 'unseen'

const lineWords = ({ name, form, count, hex }: SceneLine): string => {
	if (form === 'lights') return `${name} wound through it`
	return `${Math.max(1, Math.round(count))} ${name} (${nameOf(hex)})`
}

function tallest(pot: ScenePot, lines: readonly SceneLine[]): number {
	const sound = soundPot(pot, bodyOf(pot))
	return Math.max(0, ...lines.filter((line) => habitOf(line) === 'upright').map((line) => aboveRimCm(line, sound)))
}

/** What grows in a pot, in two sentences; none where it stands empty. */
export function plantingWords(pot: ScenePot, unit: LengthUnit): string {
	const seen = pot.lines.filter(isSeen)
	if (seen.length === 0) return 'Nothing is planted yet.'
	const lit = seen.filter(({ form }) => form === 'lights')
	const parts = places.flatMap(([role, where]) => {
		const of = seen.filter((line) => line.role === role && !lit.includes(line))
		return of.length === 0 ? [] : [`${where} ${list(of.map(lineWords))}`]
	})
	const all = [...parts, ...lit.map(lineWords)].join('; ')
	const high = tallest(pot, seen)
	const height = high === 0 ? '' : ` The tallest rises ${whole(high, unit)} above the rim.`
	return `${capital(all)}.${height}`
}
