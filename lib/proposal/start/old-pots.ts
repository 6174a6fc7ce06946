import type { Stand, Vessel } from '../../container/card'
import type { RecipeLine } from '../../recipe/recipe'
import type { ContainerId } from '../../units/id'
import type { DraftLine, DraftOption } from '../draft'
import type { Facts } from '../facts'
import { mostAlike } from './alike'
import { asRecipe } from './as-recipe'

/** Measures and stand of containers as they were when something was made for them. */
export type Vessels = ReadonlyMap<ContainerId, Vessel & { readonly stands: Stand }>

type OldPot = { readonly vessel: Vessel & { readonly stands: Stand }; readonly lines: readonly DraftLine[] }

/** What an option held, each pot with the vessel that it was made for. */
export const oldPots = ({ pots }: DraftOption, vessels: Vessels): OldPot[] =>
	pots.flatMap(({ container, lines }) => {
		const vessel = vessels.get(container)
		return vessel === undefined || lines.length === 0 ? [] : { vessel, lines }
	})

type How = { readonly materials: Facts['materials']; readonly isSameClient: boolean }

/** As recipes, by what each was made for. */
export const recipesIn = (pots: readonly OldPot[], { materials, isSameClient }: How) =>
	pots.map(({ vessel, lines }) => ({
		vessel,
		lines: lines.flatMap((line) => asRecipe(line, vessel, materials, { isSameClient }) ?? []),
	}))

/** The recipe of what was most like a container; none where there was nothing. */
export const recipeFor = (
	to: Vessel,
	recipes: readonly { readonly vessel: Vessel; readonly lines: readonly RecipeLine[] }[],
): readonly RecipeLine[] => mostAlike(to, recipes)?.lines ?? []
