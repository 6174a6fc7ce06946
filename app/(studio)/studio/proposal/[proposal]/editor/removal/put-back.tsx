'use client'
import type { ReactNode } from 'react'
import { boxId } from '../box'
import { offerPath, useRemoval } from './use-removal'

/** What was removed from this list last, and the button that puts it back; nothing where it was another list. */
export function PutBack({ list }: { readonly list: string }) {
	const { offer, back } = useRemoval()
	if (offer?.list !== list) return null
	return (
		<span className="flex flex-wrap items-center gap-x-4 bg-line/40 px-2 text-sm">
			<span className="text-soft">{offer.says}</span>
			<button type="button" id={boxId(offerPath)} className="does font-semibold" onClick={back}>
				Put back<span className="sr-only"> {offer.what}</span>
			</button>
		</span>
	)
}

type Props = { readonly list: string; readonly as: 'li' | 'div'; readonly children: readonly ReactNode[] }

/** The items of a list, with the offer among them where the one that was removed stood. */
export function WithPutBack({ list, as: Item, children }: Props) {
	const { offer } = useRemoval()
	if (offer?.list !== list) return children
	return children.toSpliced(
		offer.at,
		0,
		<Item key="put back" className="my-1">
			<PutBack list={list} />
		</Item>,
	)
}
