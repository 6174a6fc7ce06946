import { judge } from '../../colour/palette/judge'
import type { Palette, SiteColour } from '../../colour/palette/palette'
import { palettes } from '../../colour/palette/palettes'
import type { RecipeLine } from '../../recipe/recipe'
import type { Quarter } from '../../season/season'
import { cents } from '../../units/cents'
import type { MaterialId } from '../../units/id'
import type { Draft, DraftOption } from '../draft'
import type { Facts } from '../facts'
import { cardsOf } from '../job-of'
import { askOf } from './ask'
import { dressed } from './dressed'
import { grownLines } from './grown-lines'

export type LibraryRecipe = {
	readonly id: string
	readonly name: string
	readonly quarter: Quarter
	readonly lines: readonly RecipeLine[]
}

export type Proposal = {
	readonly options: readonly DraftOption[]
	/** Why there are fewer than three; null where there are three. */
	readonly short: string | null
}

/** Kinds of material that the palette and the recipe have in common. */
function kinship({ colours }: Palette, { lines }: LibraryRecipe): number {
	const of = new Set<MaterialId>(colours.flatMap(({ materials }) => materials))
	return lines.filter(({ material }) => of.has(material)).length
}

/** The recipe that has most in common with the palette; the first of those that have the same. */
function recipeFor(palette: Palette, recipes: readonly LibraryRecipe[]): LibraryRecipe | undefined {
	return recipes.toSorted((a, b) => kinship(palette, b) - kinship(palette, a))[0]
}

function optionFrom(
	palette: Palette,
	key: string,
	draft: Draft,
	facts: Facts,
	recipes: readonly LibraryRecipe[],
): DraftOption {
	const recipe = dressed(recipeFor(palette, recipes)?.lines ?? [], palette.colours, facts.materials)
	return {
		key,
		name: palette.name,
		palette: palette.colours.map(({ name, hex, echoes }) => ({ name, hex, echoes: echoes.slice(0, 60) })),
		pots: cardsOf(draft, facts).map((card) => ({
			container: card.id,
			lines: grownLines(recipe, [], card, facts.materials),
		})),
		supplementCents: cents(0),
	}
}

/** An option with a recipe grown to every container of the draft, in the option's own colours as far as they can be had. */
export function withRecipe(
	option: DraftOption,
	recipe: LibraryRecipe,
	draft: Draft,
	facts: Facts,
	site: readonly SiteColour[],
): DraftOption {
	const ask = askOf(draft, facts, site)
	const colours = ask === undefined || option.palette.length === 0 ? [] : judge(option.palette, ask).colours
	const lines = dressed(recipe.lines, colours, facts.materials)
	const pots = cardsOf(draft, facts).map((card) => {
		const before = option.pots.find(({ container }) => container === card.id)?.lines ?? []
		return { container: card.id, lines: grownLines(lines, before, card, facts.materials) }
	})
	return { ...option, pots }
}

/** Keys that no option of the draft has. */
function freshKeys({ options }: Draft, count: number): string[] {
	const taken = new Set(options.map(({ key }) => key))
	const free = Array.from({ length: taken.size + count }, (_, index) => `p${index + 1}`)
	return free.filter((key) => !taken.has(key)).slice(0, count)
}

/** Three palettes that take their colours from the first place of the draft, each with recipes grown to its containers. */
export function propose(
	draft: Draft,
	facts: Facts,
	{ site, recipes }: { readonly site: readonly SiteColour[]; readonly recipes: readonly LibraryRecipe[] },
): Proposal {
	const ask = askOf(draft, facts, site)
	if (ask === undefined)
		return { options: [], short: 'Choose the containers first: the palettes are made for their wall.' }
	const { palettes: found, short } = palettes(ask)
	const keys = freshKeys(draft, found.length)
	const ofSeason = recipes.filter((recipe) => recipe.quarter === facts.season.quarter)
	return {
		options: found.map((palette, index) => optionFrom(palette, keys[index] ?? '', draft, facts, ofSeason)),
		short,
	}
}
