'use client'
import { useRouter } from 'next/navigation'
import { useEffect, useRef } from 'react'

const leastMs = 15_000

/** Something that is being filled in would be read past. */
const isFilling = () =>
	document.querySelector('details[open] form, dialog[open]') !== null ||
	document.activeElement?.matches('input:not([type="hidden"]), textarea, select') === true

/** Shows the page as it stands now to whoever comes back to its tab; not more often than every quarter of a minute. */
export function RefreshOnReturn() {
	const router = useRouter()
	const last = useRef(0)
	useEffect(() => {
		last.current = Date.now()
		const back = () => {
			if (document.visibilityState !== 'visible' || isFilling() || Date.now() - last.current < leastMs) return
			last.current = Date.now()
			router.refresh()
		}
		document.addEventListener('visibilitychange', back)
		return () => document.removeEventListener('visibilitychange', back)
	}, [router])
	return null
}
