import type { DraftText } from '@/lib/forms/draft-form'
import type { FieldErrors } from '@/lib/forms/read'
import type { Names } from '@/lib/proposal/desk/places-in'
import type { Recipient } from '@/lib/proposal/desk/publish-words'
import type { Kind, Role, Unit } from '@/lib/recipe/material'

/** What the editor chooses from. */
export type Known = {
	/** To whom a new revision goes. */
	readonly recipients: readonly Recipient[]
	readonly places: readonly { readonly id: string; readonly name: string }[]
	readonly containers: readonly { readonly id: string; readonly place: string; readonly name: string }[]
	readonly colours: readonly { readonly name: string; readonly hex: string; readonly side: string }[]
	/** The library's, of this season. */
	readonly recipes: readonly { readonly id: string; readonly name: string }[]
	readonly materials: readonly {
		readonly id: string
		readonly name: string
		readonly role: Role
		readonly unit: Unit
		readonly kind: Kind
	}[]
}

/** What stands behind the ids of a draft. */
export const namesOf = ({ containers, materials, places }: Known): Names =>
	new Map([...containers, ...materials, ...places].map(({ id, name }) => [id, name]))

export type Line = DraftText['extras'][number]['lines'][number]
export type Option = DraftText['options'][number]
export type Extra = DraftText['extras'][number]
export type Part<T> = {
	readonly value: T
	readonly onChange: (next: T) => void
	readonly errors: FieldErrors
	readonly path: string
}

export const replaced = <T>(items: readonly T[], index: number, next: T): T[] =>
	items.map((item, at) => (at === index ? next : item))

/** What is wrong at a path of the draft, and the path, for the box that stands there. */
export const boxAt = (errors: FieldErrors, path: string) => ({ at: path, error: errors[path] })

/** A short key that none of `taken` has. */
export function freshKey(taken: readonly { readonly key: string }[]): string {
	const used = new Set(taken.map(({ key }) => key))
	for (let n = 1; ; n += 1) if (!used.has(`k${n}`)) return `k${n}`
}

/** A line that the designer makes by hand: nothing grows it. */
export const byHand = { grows: null, isKept: false } as const
