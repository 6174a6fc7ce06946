import type { Draft, DraftLine } from '@/lib/proposal/draft'
import { cents } from '@/lib/units/cents'
import { addDays } from '@/lib/units/day'
import type { CastRecipe } from '../../cast/catalogue/recipe-shape'
import { type RecipeKey, recipes } from '../../cast/catalogue/recipes'
import type { CastDraft, CastExtra, CastLine, CastOption } from '../../cast/proposals/shape'
import { type CastContainer, type ContainerKey, containers } from '../../cast/sites/containers'
import { sizes } from '../../cast/vessels'
import type { Stage } from '../stage'

const table: Record<RecipeKey, CastRecipe> = recipes
const vessels: Record<ContainerKey, CastContainer> = containers

/** What the recipe puts into a container of that size. */
function linesFor(recipe: RecipeKey | null, container: ContainerKey): CastLine[] {
	if (recipe === null) return []
	const column = sizes.indexOf(vessels[container].size)
	return table[recipe].lines.map(([material, role, holding, counts]) => [material, role, holding, counts[column] ?? 0])
}

const lineOf =
	({ materials }: Stage) =>
	([material, role, holding, value]: CastLine): DraftLine => ({
		material: materials.of(material),
		role,
		holding,
		count: { way: 'typed', value },
	})

function optionOf(option: CastOption, { containers: own }: CastDraft, stage: Stage): Draft['options'][number] {
	const { key, name, palette, recipe, added = {}, supplementCents = 0 } = option
	const pots = own.map((container) => ({
		container: stage.containers.of(container),
		lines: [...linesFor(recipe, container), ...(added[container] ?? [])].map(lineOf(stage)),
	}))
	return { key, name, palette, pots, supplementCents: cents(supplementCents) }
}

export const extraOf = (stage: Stage, { place, lines, ...extra }: CastExtra): Draft['extras'][number] => ({
	...extra,
	place: stage.places.of(place),
	lines: lines.map(lineOf(stage)),
})

function agreementOf({ agreement }: CastDraft, { containers: made }: Stage): Draft['agreement'] {
	if (agreement === undefined) return { is: 'none' }
	if (agreement.is === 'discount') return agreement
	return { is: 'fixed', cents: cents(agreement.cents), containers: agreement.containers.map(made.of) }
}

/** What the designer wrote over a draft that has just begun: its dates stand where the cast names none. */
export function writtenOver(begun: Draft, of: CastDraft, stage: Stage): Draft {
	const day = (on: number) => addDays(stage.today, on)
	const { window, answerBy, mayLeaveOut = [], isNew = [] } = of
	return {
		...begun,
		title: of.title,
		letter: of.letter,
		...(window && { window: { from: day(window[0]), to: day(window[1]) } }),
		...(answerBy !== undefined && { answerBy: day(answerBy) }),
		design: of.design ?? 'new',
		takeDown: of.takeDown ?? false,
		containers: of.containers.map((key) => ({
			id: stage.containers.of(key),
			mayLeaveOut: mayLeaveOut.includes(key),
			isNew: isNew.includes(key),
		})),
		options: of.options.map((option) => optionOf(option, of, stage)),
		extras: (of.extras ?? []).map((extra) => extraOf(stage, extra)),
		agreement: agreementOf(of, stage),
	}
}
