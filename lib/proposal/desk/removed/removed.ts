import type { DraftText } from '../../../forms/draft-form'

export type Option = DraftText['options'][number]
export type Extra = DraftText['extras'][number]
export type Line = Extra['lines'][number]
export type Pots = Option['pots']
type Note = DraftText['overruled'][number]

/** Where lines stand, by keys, so that it holds while other things move: in a container of a palette, or in an extra. */
export type LinesOf = { readonly option: string; readonly container: string } | { readonly extra: string }

/** What can be taken out of a draft, by where it stands. */
export type Target =
	| { readonly is: 'palette'; readonly option: string }
	| { readonly is: 'colour'; readonly option: string; readonly at: number }
	| { readonly is: 'line'; readonly of: LinesOf; readonly at: number }
	| { readonly is: 'extra'; readonly extra: string }
	| { readonly is: 'container'; readonly container: string }
	| { readonly is: 'note'; readonly option: string; readonly container: string; readonly check: string }

export type NotesAt = readonly { readonly at: number; readonly note: Note }[]

/** What was taken out of a draft last, whole, and where it stood. */
export type Removed =
	| { readonly is: 'palette'; readonly at: number; readonly option: Option; readonly notes: NotesAt }
	| { readonly is: 'colour'; readonly of: string; readonly at: number; readonly colour: Option['palette'][number] }
	| { readonly is: 'line'; readonly of: LinesOf; readonly at: number; readonly line: Line }
	| { readonly is: 'extra'; readonly at: number; readonly extra: Extra }
	| { readonly is: 'container'; readonly at: number; readonly container: DraftText['containers'][number] }
	| { readonly is: 'note'; readonly notes: NotesAt }
	| { readonly is: 'pots'; readonly of: string; readonly before: Pots; readonly after: Pots }

/** A draft after something was taken out of it or put back into it, and what can be put back then. */
export type Done = { readonly draft: DraftText; readonly removed: Removed | null }
