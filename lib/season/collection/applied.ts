import type { Desk } from '../../colour/palette/desk'
import { judgeOn } from '../../colour/palette/judge'
import type { Judged } from '../../colour/palette/palette'
import { plantedAs } from '../../container/planted-as'
import { dressed } from '../../proposal/design/dressed'
import { grownLines } from '../../proposal/design/grown-lines'
import type { LibraryRecipe } from '../../proposal/design/propose'
import type { DraftOption } from '../../proposal/draft'
import { type Fit, fitOf } from '../../proposal/start/fit'
import {
	asPalette,
	cardsToFill,
	containersOf,
	deskFor,
	type Fresh,
	type Ground,
	setAgainst,
	wantedFor,
	withPut,
} from '../../proposal/start/fresh'
import { soundRecipe } from '../../proposal/start/sound-recipe'
import { cents } from '../../units/cents'
import type { Collection, Design } from './collection'
import { extrasAt } from './extras-at'

export type Applied = Fresh & { readonly fits: readonly Fit[] }

type Shelf = { readonly recipes: readonly LibraryRecipe[] }
type Made = { readonly option: DraftOption; readonly fit: Fit; readonly told: readonly string[] }

function potsOf(design: Design, colours: Judged['colours'], ground: Ground, { recipes }: Shelf) {
	const { materials } = ground.facts
	const all = cardsToFill(ground).map((card) => {
		const id = design.recipes[plantedAs(card)] ?? design.recipes.pot
		const { recipe, told } = soundRecipe(
			recipes.find((each) => each.id === id)?.lines ?? [],
			materials,
			wantedFor(ground, card.id),
		)
		const lines = grownLines(dressed(recipe, colours, materials), [], card, materials)
		return { pot: { container: card.id, lines }, told }
	})
	return { pots: all.map(({ pot }) => pot), told: all.flatMap((each) => each.told) }
}

function made(design: Design, desk: Desk | undefined, ground: Ground, shelf: Shelf): Made {
	const judged = desk && judgeOn(design.palette, desk)
	const { pots, told } = potsOf(design, judged?.colours ?? [], ground, shelf)
	const palette = judged === undefined ? setAgainst(design.palette, undefined) : asPalette(judged.colours)
	const option = { key: design.key, name: design.name, palette, pots, supplementCents: cents(0) }
	return { option, fit: fitOf(option, judged, ground), told }
}

/** The best of the designs before this client's wall, best first; of those as good the one that comes first. */
function best(designs: readonly Design[], ground: Ground, shelf: Shelf, count: number): Made[] {
	const desk = deskFor(ground)
	const all = designs.map((design) => made(design, desk, ground, shelf))
	return all.toSorted((a, b) => b.fit.worth - a.fit.worth).slice(0, count)
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
