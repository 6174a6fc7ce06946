import { cents } from '../../units/cents'
import { grownLines } from '../design/grown-lines'
import type { Draft, DraftOption } from '../draft'
import { cardsToFill, deskFor, type Fresh, type Ground, setAgainst, wantedFor, withPut } from './fresh'
import { oldPots, recipeFor, recipesIn, type Vessels } from './old-pots'
import { soundRecipe } from './sound-recipe'

/** What another client's draft holds, and the containers that it was made for. */
export type Another = { readonly draft: Draft; readonly vessels: Vessels }

type Made = { readonly option: DraftOption; readonly told: readonly string[] }

function optionFrom(of: DraftOption, key: string, { vessels }: Another, ground: Ground): Made {
	const { materials } = ground.facts
	const recipes = recipesIn(oldPots(of, vessels), { materials, isSameClient: false })
	const made = cardsToFill(ground).map((card) => {
		const { recipe, told } = soundRecipe(recipeFor(card, recipes), materials, wantedFor(ground, card.id))
		return { pot: { container: card.id, lines: grownLines(recipe, [], card, materials) }, told }
	})
	return {
		option: {
			key,
			name: of.name,
			palette: setAgainst(of.palette, deskFor(ground)),
			pots: made.map(({ pot }) => pot),
			supplementCents: cents(0),
		},
		told: made.flatMap(({ told }) => told),
	}
}

/**
 * The palettes of another client's proposal before this client's wall, what they hold grown to this client's
 * containers, each from the pot that was most like it. Their letter, extras, prices and own things stay with them.
 */
export function fromAnother(another: Another, ground: Ground): Fresh {
	const made = another.draft.options.map((option, index) => optionFrom(option, `p${index + 1}`, another, ground))
	const options = made.map(({ option }) => option)
	const told = [...new Set(made.flatMap((each) => each.told))]
	return { draft: withPut(ground, { title: options[0]?.name ?? '', options }), told }
}
