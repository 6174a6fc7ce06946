'use client'
import { createContext, useContext, useState } from 'react'
import type { DraftText } from '@/lib/forms/draft-form'
import type { Names } from '@/lib/proposal/desk/places-in'
import { backAt } from '@/lib/proposal/desk/removed/back-at'
import { putBack } from '@/lib/proposal/desk/removed/put-back'
import { remove, replacePots } from '@/lib/proposal/desk/removed/remove'
import type { Done, Pots, Removed, Target } from '@/lib/proposal/desk/removed/removed'
import { calledRemoved, placeOf, removedInWords } from '@/lib/proposal/desk/removed/told'

export type Offer = { readonly list: string; readonly at: number; readonly what: string; readonly says: string }
export type Removal = {
	/** What was removed last, and where it can be put back; null where there is nothing. */
	readonly offer: Offer | null
	readonly takeOut: (target: Target) => void
	readonly back: () => void
	/** Moves the focus to a box once it is there. */
	readonly goTo: (path: string) => void
}

type On = {
	readonly draft: DraftText
	readonly change: (next: DraftText) => void
	readonly names: Names
	readonly goTo: (path: string) => void
}

/** Where the button stands that puts back what was removed last. */
export const offerPath = 'put back'

/** Keeps what was removed from the draft last until the next is, or until the desk is left. */
export function useRemovals({ draft, change, names, goTo }: On) {
	const [removed, setRemoved] = useState<Removed | null>(null)
	const [said, setSaid] = useState('')
	const keep = (done: Done) => {
		change(done.draft)
		if (done.removed === null) return
		setRemoved(done.removed)
		setSaid(removedInWords(done.removed, names))
	}
	const takeOut = (target: Target) => {
		const done = remove(draft, target)
		if (done === undefined) return
		keep(done)
		// The tick of a container stays where it is, all else that was pressed is gone.
		if (target.is !== 'container') goTo(offerPath)
	}
	/** Other things into the containers of a palette, of the draft as it stands when they come. */
	const replace = (now: DraftText, option: string, pots: Pots) => keep(replacePots(now, option, pots))
	const back = () => {
		const done = removed && putBack(draft, removed)
		if (!done) return
		change(done.draft)
		setRemoved(done.removed)
		setSaid('It is back where it was.')
		const at = backAt(done.draft, removed)
		if (at !== null) goTo(at)
	}
	const forget = () => {
		setRemoved(null)
		setSaid('')
	}
	const offer = removed && {
		...placeOf(removed),
		what: calledRemoved(removed, names),
		says: removedInWords(removed, names),
	}
	return { removal: { offer, takeOut, back, goTo }, replace, forget, said }
}

const Removing = createContext<Removal | null>(null)
export const RemovalOf = Removing.Provider

export function useRemoval(): Removal {
	const removal = useContext(Removing)
	if (removal === null) throw new Error('a part of the desk stands outside the desk: nothing can be removed there')
	return removal
}
