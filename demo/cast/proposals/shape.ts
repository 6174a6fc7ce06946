import type { Draft } from '@/lib/proposal/draft'
import type { Holding, Role } from '@/lib/recipe/material'
import type { MaterialKey } from '../catalogue/materials'
import type { RecipeKey } from '../catalogue/recipes'
import type { PersonKey } from '../people'
import type { ContainerKey } from '../sites/containers'
import type { PlaceKey } from '../sites/places'

export type CastLine = readonly [material: MaterialKey, role: Role, holding: Holding, count: number]

export type CastOption = {
	readonly key: string
	readonly name: string
	readonly palette: Draft['options'][number]['palette']
	/** What goes in, by the recipe; null while nothing is in yet. */
	readonly recipe: RecipeKey | null
	/** Beside the recipe, in one container. */
	readonly added?: { readonly [Key in ContainerKey]?: readonly CastLine[] }
	readonly supplementCents?: number
}

export type CastExtra = {
	readonly key: string
	readonly name: string
	readonly words: string
	readonly place: PlaceKey
	readonly minutes: number
	readonly lines: readonly CastLine[]
}

type CastAgreement =
	| { readonly is: 'discount'; readonly percent: number }
	| { readonly is: 'fixed'; readonly cents: number; readonly containers: readonly ContainerKey[] }

/** Days count from today, below zero what has been. */
export type CastDraft = {
	readonly title: string
	readonly letter: string
	readonly window?: readonly [from: number, to: number]
	readonly answerBy?: number
	readonly design?: 'new' | 'repeat'
	readonly takeDown?: boolean
	readonly containers: readonly ContainerKey[]
	readonly mayLeaveOut?: readonly ContainerKey[]
	readonly isNew?: readonly ContainerKey[]
	readonly options: readonly CastOption[]
	readonly extras?: readonly CastExtra[]
	readonly agreement?: CastAgreement
}

/** A note names a container, or `whole`. */
export type CastNote = readonly [about: ContainerKey | 'whole', words: string]

/** What was done: on which day from today, at what time (UTC), by whom when it was a contact. */
export type Step = { readonly on: number; readonly at: string } & (
	| { readonly does: 'save' | 'publish' | 'remind' | 'note lapses' }
	| { readonly does: 'withdraw' | 'cancel' | 'install'; readonly reason: string }
	| { readonly does: 'redraft'; readonly letter: string; readonly extras: readonly CastExtra[] }
	| { readonly does: 'see'; readonly by: PersonKey }
	| { readonly does: 'skip'; readonly by: PersonKey; readonly why: string }
	| { readonly does: 'ask for a change'; readonly by: PersonKey; readonly notes: readonly CastNote[] }
	| {
			readonly does: 'approve'
			readonly by: PersonKey
			readonly option: string
			readonly extras?: readonly string[]
			readonly leftOut?: readonly ContainerKey[]
			readonly purchaseOrder?: string
	  }
)

export type CastProposal = CastDraft & { readonly story: readonly Step[] }

const lights = (place: PlaceKey, strings: number, words: string): CastExtra => ({
	key: 'lights',
	name: strings === 1 ? 'A string of warm lights' : 'Two strings of warm lights',
	words,
	place,
	minutes: 0,
	lines: [['warmLights', 'accent', 'lent', strings]],
})

export const extras = {
	lights,
	refresh: (place: PlaceKey): CastExtra => ({
		key: 'refresh',
		name: 'A mid-winter refresh',
		words: 'Half-way through we tidy, turn and water, and swap what has browned.',
		place,
		minutes: 45,
		lines: [],
	}),
	berries: (place: PlaceKey, stems: number): CastExtra => ({
		key: 'berries',
		name: 'Frosted berries',
		words: 'Faux sprays between the greens, for the grey weeks after New Year.',
		place,
		minutes: 4,
		lines: [['frostBerries', 'accent', 'lent', stems]],
	}),
}
