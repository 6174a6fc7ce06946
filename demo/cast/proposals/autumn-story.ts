import { type RecipeKey, recipes } from '../catalogue/recipes'
import { type PaletteKey, paint } from '../palettes'
import type { PersonKey } from '../people'
import type { CastDraft, CastProposal } from './shape'

type Look = { readonly recipe: RecipeKey; readonly palette: PaletteKey; readonly echoes: readonly string[] }
type Told = Pick<CastDraft, 'title' | 'letter' | 'containers' | 'agreement'>

function autumn(told: Told, { recipe, palette, echoes }: Look, story: CastProposal['story']): CastProposal {
	const option = { key: 'a', name: recipes[recipe].name, palette: paint(palette, ...echoes), recipe }
	const out = [
		{ on: -68, at: '15:00', does: 'save' },
		{ on: -62, at: '14:30', does: 'publish' },
	] as const
	return { ...told, design: 'repeat', options: [option], story: [...out, ...story] }
}

/** Approved on the day `answered` and put in on the day `day`. */
export const done = (
	told: Told,
	look: Look,
	by: PersonKey,
	answered: number,
	day: number,
	purchaseOrder = '',
): CastProposal =>
	autumn(told, look, [
		{ on: answered, at: '17:35', does: 'see', by },
		{ on: answered, at: '17:50', does: 'approve', by, option: 'a', purchaseOrder },
		{ on: day, at: '19:30', does: 'install', reason: '' },
	])

export const left = (told: Told, look: Look, by: PersonKey, answered: number, why: string): CastProposal =>
	autumn(told, look, [{ on: answered, at: '18:20', does: 'skip', by, why }])
