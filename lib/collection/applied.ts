import { judge } from '../colour/palette/judge'
import { plantedAs } from '../container/planted-as'
import { askOf } from '../proposal/design/ask'
import { dressed } from '../proposal/design/dressed'
import { grownLines } from '../proposal/design/grown-lines'
import type { LibraryRecipe } from '../proposal/design/propose'
import type { DraftOption } from '../proposal/draft'
import { type Fit, fitOf } from '../proposal/start/fit'
import {
	cardsToFill,
	containersOf,
	type Fresh,
	type Ground,
	setAgainst,
	wantedFor,
	withPut,
} from '../proposal/start/fresh'
import { soundRecipe } from '../proposal/start/sound-recipe'
import { cents } from '../units/cents'
import type { Collection, Design } from './collection'
import { extrasAt } from './extras-at'

export type Applied = Fresh & { readonly fits: readonly Fit[] }

type Shelf = { readonly recipes: readonly LibraryRecipe[] }
type Made = { readonly option: DraftOption; readonly fit: Fit; readonly told: readonly string[] }

function optionOf(design: Design, ground: Ground, { recipes }: Shelf): Omit<Made, 'fit'> {
	const { materials } = ground.facts
	const ask = askOf(ground.draft, ground.facts, ground.site)
	const colours = ask === undefined ? [] : judge(design.palette, ask).colours
	const wanted = wantedFor(ground)
	const filled = cardsToFill(ground).map((card) => {
		const id = design.recipes[plantedAs(card)] ?? design.recipes.pot
		const { recipe, told } = soundRecipe(recipes.find((each) => each.id === id)?.lines ?? [], materials, wanted)
		const lines = grownLines(dressed(recipe, colours, materials), [], card, materials)
		return { pot: { container: card.id, lines }, told }
	})
	const { key, name, palette } = design
	const pots = filled.map(({ pot }) => pot)
	return {
		option: { key, name, palette: setAgainst(palette, ground), pots, supplementCents: cents(0) },
		told: filled.flatMap(({ told }) => told),
	}
}

/** The best of the designs before this client's wall, best first; of those as good the one that comes first. */
function best(designs: readonly Design[], ground: Ground, shelf: Shelf, count: number): Made[] {
	const made = designs.map((design) => {
		const { option, told } = optionOf(design, ground, shelf)
		return { option, told, fit: fitOf(option, ground) }
	})
	return made.toSorted((a, b) => b.fit.worth - a.fit.worth).slice(0, count)
}

/**
 * The season's house designs for one client: of all designs the `count` that stand best before their wall and in their
 * containers, each grown to every container from the recipe that fits it, in the design's colours. How each fits comes
 * beside it. The collection has no problems.
 */
export function applied(collection: Collection, ground: Ground, shelf: Shelf, count: number): Applied {
	const filled = { ...ground, draft: { ...ground.draft, containers: containersOf(ground), overruled: [] } }
	const chosen = best(collection.designs, filled, shelf, count)
	const { extras, told } = extrasAt(collection.extras, filled)
	const { title, letter } = collection
	return {
		draft: withPut(ground, { title, letter, options: chosen.map(({ option }) => option), extras }),
		told: [...new Set([...chosen.flatMap((each) => each.told), ...told])],
		fits: chosen.map(({ fit }) => fit),
	}
}
