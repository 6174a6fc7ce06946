import { capital } from '../format/words'
import type { Hazard } from '../recipe/material'
import type { Card, Material } from './facts'

const hazardWords: Record<Hazard, string> = {
	'poisonous to people': 'is poisonous if eaten; keep children from it',
	'poisonous to pets': 'is poisonous to pets',
	'small parts': 'has small parts; keep it from small children and pets',
}

/** NEC 590.3(B): holiday lighting is temporary wiring, for 90 days. */
const lightWords =
	'Lights are for outdoors and want a GFCI-protected outlet; no cord across a walk. They come down within 90 days.'

function hazardSentences(materials: readonly Material[]): string[] {
	return [
		...new Set(
			materials.flatMap(({ name, hazards }) => hazards.map((hazard) => `${capital(name)} ${hazardWords[hazard]}.`)),
		),
	]
}

function siteSentences(cards: readonly Card[]): string[] {
	const limited = cards.filter(({ limitedWeight }) => limitedWeight !== 'none')
	const narrow = cards.filter(({ walkLeftCm }) => walkLeftCm !== null && walkLeftCm < 122)
	return [
		...limited.map(
			({ name, limitedWeight }) =>
				`${name} stands on a ${limitedWeight}: have a licensed engineer say what it may carry when full and wet.`,
		),
		...narrow.map(
			({ name }) => `${name} leaves a narrow walk: ask the local authority for the width to be kept clear.`,
		),
	]
}

/** Short, in place: what a client should know of the materials, the lights and where the containers stand. */
export function cautions(materials: readonly Material[], cards: readonly Card[]): string[] {
	const poison = materials.some(({ hazards }) => hazards.some((hazard) => hazard.startsWith('poisonous')))
	return [
		...hazardSentences(materials),
		...(poison ? ['If someone has eaten of it, call your poison line at once.'] : []),
		...(materials.some(({ kind }) => kind === 'light') ? [lightWords] : []),
		...(materials.some(({ kind, piece }) => kind === 'fresh' && piece === 'green')
			? ['Greens dry out over the winter: keep them from heaters and open flames.']
			: []),
		...siteSentences(cards),
	]
}
