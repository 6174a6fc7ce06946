'use client'
import { useRouter } from 'next/navigation'
import { type ReactNode, useRef, useTransition } from 'react'

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
	const [isPending, begin] = useTransition()
	const update = () => {
		const { current } = form
		if (current !== null) begin(() => router.replace(addressOf(current), { scroll: false }))
	}
	return (
		<form id="choice" ref={form} method="get" action={action} onChange={update} aria-busy={isPending}>
			{children}
			<noscript>
				<button type="submit" className="act mt-5">
					Update the total
				</button>
			</noscript>
		</form>
	)
}
