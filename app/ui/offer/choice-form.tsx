'use client'
import { useRouter } from 'next/navigation'
import { type ReactNode, useEffect, useRef, useState, useTransition } from 'react'

type Props = { readonly action: string; readonly children: ReactNode }

const addressOf = (form: HTMLFormElement) => {
	const query = new URLSearchParams()
	for (const [name, value] of new FormData(form)) if (typeof value === 'string') query.append(name, value)
	return `${form.getAttribute('action')}?${query}`
}

/** A plain form that fetches the page with the new total; with scripts it does so at each tick, without a button. */
export function ChoiceForm({ action, children }: Props) {
	const router = useRouter()
	const form = useRef<HTMLFormElement>(null)
	const [hasScripts, setHasScripts] = useState(false)
	const [isPending, begin] = useTransition()
	useEffect(() => setHasScripts(true), [])
	const update = () => {
		const { current } = form
		if (current !== null) begin(() => router.replace(addressOf(current), { scroll: false }))
	}
	return (
		<form id="choice" ref={form} method="get" action={action} onChange={update} aria-busy={isPending}>
			{children}
			{!hasScripts && (
				<button type="submit" className="act mt-5">
					Update the total
				</button>
			)}
		</form>
	)
}
