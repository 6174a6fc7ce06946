'use client'
import { useEffect, useRef } from 'react'

/** What somebody has to know before they go on; it takes the focus, and so comes into view. */
export function Alert({ children }: { readonly children: string }) {
	const alert = useRef<HTMLParagraphElement>(null)
	useEffect(() => alert.current?.focus(), [])
	return (
		<p ref={alert} className="said wrong mt-8 text-lg" role="alert" tabIndex={-1}>
			{children}
		</p>
	)
}
