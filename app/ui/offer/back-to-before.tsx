'use client'
import { usePathname, useSearchParams } from 'next/navigation'
import { useEffect } from 'react'

/**
 * The router knows nothing of an entry of the history that was made before the scripts arrived: going back to it would
 * change the address and leave the page as it is. It is fetched anew then.
 */
export function BackToBefore() {
	const shown = `${usePathname()}?${useSearchParams()}`
	useEffect(() => {
		const look = ({ state }: PopStateEvent) => {
			const { pathname, search } = location
			if (state === null && `${pathname}?${new URLSearchParams(search)}` !== shown) location.reload()
		}
		addEventListener('popstate', look)
		return () => removeEventListener('popstate', look)
	}, [shown])
	return null
}
