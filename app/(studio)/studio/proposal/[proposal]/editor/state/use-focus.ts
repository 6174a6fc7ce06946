'use client'
import { useCallback, useEffect, useRef } from 'react'
import { boxId } from '../box'

type Wanted = { readonly id: string; readonly from: Element | null }

/** What is folded away cannot be reached. */
function unfold(box: Element): void {
	for (let at = box.closest('details'); at !== null; at = at.parentElement?.closest('details') ?? null) at.open = true
}

/**
 * Moves the focus to a box of the desk as soon as it is there, so that it never falls back to the top of the page; not
 * when the designer has gone elsewhere meanwhile.
 */
export function useFocus(): (path: string) => void {
	const wanted = useRef<Wanted | null>(null)
	useEffect(() => {
		if (wanted.current === null) return
		const { id, from } = wanted.current
		const now = document.activeElement
		const box = document.getElementById(id)
		const isElsewhere = now !== null && now !== document.body && now !== from
		if (!isElsewhere && box === null) return
		wanted.current = null
		if (isElsewhere || box === null) return
		unfold(box)
		box.focus()
	})
	return useCallback((path) => {
		wanted.current = { id: boxId(path), from: document.activeElement }
	}, [])
}
