'use client'
import { useEffect, useRef } from 'react'
import { named } from '@/lib/forms/named'
import type { FieldErrors } from '@/lib/forms/read'

type Props = {
	readonly errors: FieldErrors
	/** What each box is called, by its name; said before what is wrong with it. */
	readonly labels?: Readonly<Record<string, string>>
}

/** What is wrong with a form, at its top and in the title, each a link to its box; it takes the focus. */
export function ErrorSummary({ errors, labels = {} }: Props) {
	const summary = useRef<HTMLElement>(null)
	const all = Object.entries(errors)
	const count = all.length
	useEffect(() => {
		if (count === 0) return
		summary.current?.focus()
		if (!document.title.startsWith('Error: ')) document.title = `Error: ${document.title}`
	}, [count])
	if (count === 0) return null
	return (
		<section ref={summary} className="said wrong mt-6" role="alert" tabIndex={-1} aria-labelledby="error-summary">
			<h2 id="error-summary" className="text-lg">
				{count === 1 ? 'One thing needs another look' : `${count} things need another look`}
			</h2>
			<ul className="mt-2">
				{all.map(([name, says]) => (
					<li key={name}>
						<a className="inline-block py-1 pointer-coarse:py-2.5" href={`#${name}`}>
							{named(labels[name], says)}
						</a>
					</li>
				))}
			</ul>
		</section>
	)
}
