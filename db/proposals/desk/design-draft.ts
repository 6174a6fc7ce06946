import type { Viewer } from '@/lib/access/viewer'
import { regrown } from '@/lib/proposal/design/grown-lines'
import { type Proposal, propose, withRecipe } from '@/lib/proposal/design/propose'
import type { Draft, DraftOption } from '@/lib/proposal/draft'
import type { Facts } from '@/lib/proposal/facts'
import { cardsOf } from '@/lib/proposal/job-of'
import type { ProposalId } from '@/lib/units/id'
import { libraryIn } from '../../catalogue/read-recipes'
import { read } from '../../open'
import type { Stamp } from '../../stamp'
import { knownFor } from './known'

type Asked = { readonly proposal: ProposalId; readonly draft: Draft }

function shelfFor(viewer: Viewer, id: ProposalId, stamp: Pick<Stamp, 'at'>) {
	return read((db) => {
		const known = knownFor(db, viewer, 'see the draft', id, stamp)
		return known && { ...known, recipes: libraryIn(db) }
	})
}

/** Three palettes of the building's colours, with recipes grown to the draft's containers; nothing is stored. */
export async function proposeOptions(
	viewer: Viewer,
	{ proposal, draft }: Asked,
	stamp: Pick<Stamp, 'at'>,
): Promise<Proposal | undefined> {
	const known = shelfFor(viewer, proposal, stamp)
	return known && propose(draft, known.facts, known)
}

function grownAnew(option: DraftOption, draft: Draft, facts: Facts): DraftOption {
	const cards = cardsOf(draft, facts)
	const pots = option.pots.map((pot) => {
		const card = cards.find(({ id }) => id === pot.container)
		return card === undefined ? pot : { ...pot, lines: regrown(pot.lines, card, facts.materials) }
	})
	return { ...option, pots }
}

/**
 * An option with a recipe of the library grown to every container, in the option's own colours; with none named, its
 * own lines grown anew. What is kept or typed stays. Undefined where the recipe or the option is not there; a recipe with no
 * lines would only take away what stands.
 */
export async function growOption(
	viewer: Viewer,
	{ proposal, draft, option: key, recipe: of }: Asked & { readonly option: string; readonly recipe: string | null },
	stamp: Pick<Stamp, 'at'>,
): Promise<DraftOption | 'no lines' | undefined> {
	const known = shelfFor(viewer, proposal, stamp)
	const option = draft.options.find((each) => each.key === key)
	if (known === undefined || option === undefined) return undefined
	if (of === null) return grownAnew(option, draft, known.facts)
	const recipe = known.recipes.find(({ id }) => id === of)
	if (recipe?.lines.length === 0) return 'no lines'
	return recipe && withRecipe(option, recipe, draft, known.facts, known.site)
}
