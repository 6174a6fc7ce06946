import { capital, list, numberWord } from '../format/words'
import type { Hazard, Role } from './material'
import { isCluster, type Planned } from './planned'

export type Summary = {
	/** "White birch and red dogwood up the middle, three greens, cedar over the rim, brass globes." */
	readonly says: string
	/** Of what children and pets should keep away; null where there is nothing. */
	readonly hazards: string | null
}

/** "clusters of brass globes" is told as brass globes. */
const told = ({ material }: Planned): string =>
	isCluster(material) ? material.name.replace(/^clusters? of /i, '') : material.name

const names = (lines: readonly Planned[]): string[] => [...new Set(lines.map(told))]

/** From this many kinds on, greens are counted and not named. */
const manyGreens = 3

function filling(lines: readonly Planned[]): string[] {
	const [greens, others] = [
		names(lines.filter(({ material }) => material.piece === 'green')),
		names(lines.filter(({ material }) => material.piece !== 'green')),
	]
	const counted = greens.length < manyGreens ? greens : [`${numberWord(greens.length).toLowerCase()} greens`]
	return [...counted, ...others]
}

/** What fills, then what trails, then what is set in; lights last. */
function parts(lines: readonly Planned[]): string[] {
	const of = (role: Role) => lines.filter((line) => line.role === role)
	const accents = of('accent')
	const lights = accents.filter(({ material }) => material.kind === 'light')
	const placed = (some: readonly string[], place: string) => (some.length === 0 ? [] : [`${list(some)}${place}`])
	return [
		...placed(names(of('thriller')), ' up the middle'),
		...placed(filling(of('filler')), ''),
		...placed(names(of('spiller')), ' over the rim'),
		...placed(names(accents.filter((line) => !lights.includes(line))), ''),
		...placed(names(lights), ''),
	]
}

/** Who should keep away from what, and why; the worst first. */
const groups: readonly { readonly is: readonly Hazard[]; readonly who: string; readonly why: string }[] = [
	{ is: ['poisonous to people', 'poisonous to pets'], who: 'children and pets', why: 'poisonous' },
	{ is: ['poisonous to people'], who: 'children', why: 'poisonous' },
	{ is: ['poisonous to pets'], who: 'pets', why: 'poisonous' },
	{ is: ['small parts'], who: 'small children and pets', why: 'small parts' },
]

function hazardSentence(lines: readonly Planned[]): string | null {
	const poison = ({ material }: Planned) => material.hazards.filter((hazard) => hazard !== 'small parts')
	const isOf = (line: Planned, is: readonly Hazard[]) =>
		is.includes('small parts')
			? line.material.hazards.includes('small parts')
			: poison(line).length === is.length && is.every((hazard) => line.material.hazards.includes(hazard))
	const sentences = groups.flatMap(({ is, who, why }) => {
		const found = names(lines.filter((line) => isOf(line, is)))
		return found.length === 0 ? [] : [`Keep ${who} away from ${list(found)} (${why}).`]
	})
	return sentences.length === 0 ? null : sentences.join(' ')
}

/** What one would tell a neighbour, from names, roles and counts: never costs, and nothing of what only holds it. */
export function summary(lines: readonly Planned[]): Summary {
	const seen = lines.filter(
		({ role, material, count }) => role !== 'mechanics' && material.kind !== 'mechanics' && count > 0,
	)
	const all = parts(seen)
	return { says: all.length === 0 ? 'Nothing yet.' : `${capital(all.join(', '))}.`, hazards: hazardSentence(seen) }
}
