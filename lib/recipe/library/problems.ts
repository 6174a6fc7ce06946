import type { MaterialId } from '../../units/id'
import { canBeLent } from '../material'
import type { Grows, RecipeLine } from '../recipe'
import type { DesignMaterial } from '../traits'

/** What keeps a recipe from being kept; `at` is the place of the line that it is about, null for the whole. */
export type RecipeProblem = {
	readonly at: number | null
	readonly field: 'count' | 'holding' | 'holds' | 'lines'
	readonly says: string
}

type Materials = ReadonlyMap<MaterialId, Pick<DesignMaterial, 'name' | 'kind'>>

/** Three plants of a third each, written as 33.3 %, are a whole. */
const nearly = 0.005

/** What leaves no room of its own to be named: it stands where the plants do not. */
const fills: ReadonlySet<Grows['way']> = new Set(['stems', 'greens', 'fixed'])

const asPercent = (share: number) => `${Math.round(share * 1000) / 10} %`

function shares(lines: readonly RecipeLine[]): RecipeProblem[] {
	const plants = lines.flatMap(({ grows }, at) => (grows.way === 'spacing' ? [{ at, share: grows.share }] : []))
	const last = plants.at(-1)
	if (last === undefined) return []
	const sum = plants.reduce((all, { share }) => all + share, 0)
	const problem = (says: string): RecipeProblem[] => [{ at: last.at, field: 'count', says }]
	if (sum > 1 + nearly)
		return problem(`The live plants take ${asPercent(sum)} of the opening, more than there is: make it 100 % in all.`)
	const isFilled = lines.some(({ grows, role }) => fills.has(grows.way) && (role === 'thriller' || role === 'filler'))
	if (sum >= 1 - nearly || isFilled) return []
	return problem(
		`The live plants take ${asPercent(sum)} of the opening and nothing fills the rest: make it 100 % in all.`,
	)
}

function inLine({ material, holding, grows }: RecipeLine, at: number, lines: readonly RecipeLine[], all: Materials) {
	const found = all.get(material)
	const problems: RecipeProblem[] = []
	if (found !== undefined && holding === 'lent' && !canBeLent(found.kind))
		problems.push({ at, field: 'holding', says: `${found.name} does not come back, so it cannot be lent.` })
	if (grows.way !== 'held' || grows.holds === null) return problems
	if (grows.holds === material)
		problems.push({ at, field: 'holds', says: 'A line cannot hold itself: say which other it holds.' })
	else if (!lines.some((line) => line.material === grows.holds))
		problems.push({ at, field: 'holds', says: 'What this line holds is not in the recipe.' })
	return problems
}

/** What is wrong with the lines of a recipe, in plain sentences; nothing where it can be kept. */
export function problems(lines: readonly RecipeLine[], materials: Materials): RecipeProblem[] {
	if (lines.length === 0)
		return [{ at: null, field: 'lines', says: 'A recipe has one line at least: choose a material.' }]
	return [...lines.flatMap((line, at) => inLine(line, at, lines, materials)), ...shares(lines)]
}
