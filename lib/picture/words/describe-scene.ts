import { nameOf } from '../../colour/name-of'
import type { LengthUnit } from '../../format/length'
import { capital, list, numberWord } from '../../format/words'
import { canonical } from '../../record/canonical'
import type { Scene, ScenePot } from '../scene'
import { soundScene } from '../sound'
import { plantingWords, vesselWords } from './pot-words'

const walls: Record<Scene['wall']['kind'], string> = {
	clapboard: 'clapboard wall',
	fieldstone: 'fieldstone wall',
	stucco: 'stucco wall',
	brick: 'brick wall',
	'shop glass': 'shop front of glass',
}

function setting({ quarter, hour, wall, door, pots }: Scene): string {
	const when = `${capital(quarter)}, ${hour === 'day' ? 'by day' : 'in the evening'}`
	const count = numberWord(pots.length).toLowerCase()
	const what = `${count} ${pots.length === 1 ? 'container' : 'containers'}`
	const where = `before a ${walls[wall.kind]} (${nameOf(wall.hex)})`
	return `${when}: ${what} ${where}${door === null ? '' : `, by a door (${nameOf(door)})`}.`
}

/** Pots that are alike but for their names are told once. */
function alike(pots: readonly ScenePot[]): ScenePot[][] {
	const kinds = new Map<string, ScenePot[]>()
	for (const pot of pots) {
		const key = canonical({ ...pot, name: '' })
		kinds.set(key, [...(kinds.get(key) ?? []), pot])
	}
	return [...kinds.values()]
}

function group(same: readonly ScenePot[], unit: LengthUnit): string {
	const [first] = same
	if (first === undefined) return ''
	const names = capital(list([...new Set(same.map(({ name }) => name))]))
	const isOne = same.length === 1
	return `${names}: ${vesselWords(first, isOne, unit)}. ${plantingWords(first, unit)}`
}

/**
 * The picture of a scene in sentences, from the same data: for whoever cannot see it, and for paper. It names what is
 * seen (no fixings) and never a cost. Lengths are in the unit of the measure, in inches where there is none.
 */
export function describeScene(scene: Scene, unit: LengthUnit = scene.measure === 'cm' ? 'cm' : 'in'): string {
	const sound = soundScene(scene)
	return [setting(sound), ...alike(sound.pots).map((same) => group(same, unit))].join(' ')
}
