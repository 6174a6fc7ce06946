import { chipsOf } from '../../colour/palette/chips-of'
import type { Chip } from '../../colour/palette/palette'
import type { RecipeLine } from '../../recipe/recipe'
import { cents } from '../../units/cents'
import { grownLines } from '../design/grown-lines'
import type { LibraryRecipe } from '../design/propose'
import type { Facts } from '../facts'
import { cardsToFill, deskFor, type Fresh, type Ground, setAgainst, wantedFor, withPut } from './fresh'
import { soundRecipe } from './sound-recipe'

const order = ['accent', 'thriller', 'filler'] as const
const mostChips = 4

/** A recipe's own colours, what is set in first; lights have none by day. */
function coloursOf(lines: readonly RecipeLine[], materials: Facts['materials']): Chip[] {
	const shown = order.flatMap((role) => lines.filter((line) => line.role === role))
	const found = [...new Set(shown.map(({ material }) => material))].flatMap((id) => materials.get(id) ?? [])
	return chipsOf(found.filter(({ kind }) => kind !== 'light').slice(0, mostChips))
}

/** A draft of one palette: a recipe of the library grown to each container, in its own colours. */
export function fromRecipe({ name, lines }: LibraryRecipe, ground: Ground): Fresh {
	const { materials } = ground.facts
	const { recipe, told } = soundRecipe(lines, materials, wantedFor(ground))
	const pots = cardsToFill(ground).map((card) => ({
		container: card.id,
		lines: grownLines(recipe, [], card, materials),
	}))
	const palette = setAgainst(coloursOf(recipe, materials), deskFor(ground))
	const option = { key: 'p1', name: name.slice(0, 60), palette, pots, supplementCents: cents(0) }
	return { draft: withPut(ground, { title: name, options: [option] }), told }
}
