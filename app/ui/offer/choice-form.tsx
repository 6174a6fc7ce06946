'use client'
import { useRouter } from 'next/navigation'
import { type ReactNode, useCallback, useEffect, useRef, useTransition } from 'react'

type Props = { readonly action: string; readonly children: ReactNode }

const addressOf = (form: HTMLFormElement) => {
	const query = new URLSearchParams()
	for (const [name, value] of new FormData(form)) if (typeof value === 'string') query.append(name, value)
	return `${form.getAttribute('action')}?${query}`
}

const isTouched = (form: HTMLFormElement) =>
	[...form.elements].some((each) => each instanceof HTMLInputElement && each.checked !== each.defaultChecked)

/**
 * A plain form that fetches the page with the new total; with scripts it does so at each tick, without a button. Parts
 * of it may stand elsewhere on the page.
 */
export function ChoiceForm({ action, children }: Props) {
	const router = useRouter()
	const form = useRef<HTMLFormElement>(null)
	const hasTold = useRef(false)
	const [isPending, begin] = useTransition()
	const update = useCallback(() => {
		const { current } = form
		if (current !== null) begin(() => router.replace(addressOf(current), { scroll: false }))
	}, [router])
	useEffect(() => {
		const listen = ({ target }: Event) => {
			if (target instanceof HTMLInputElement && target.form !== null && target.form === form.current) update()
		}
		document.addEventListener('change', listen)
		return () => document.removeEventListener('change', listen)
	}, [update])
	// What was ticked before the scripts arrived has told nobody. Later a page that comes says what is picked, also when
	// a link and not the form led to it.
	useEffect(() => {
		if (form.current === null || isPending) return
		if (hasTold.current) form.current.reset()
		else if (isTouched(form.current)) update()
		hasTold.current = true
	})
	return (
		<form id="choice" ref={form} method="get" action={action} aria-busy={isPending}>
			{children}
			<noscript>
				<button type="submit" className="act mt-5">
					Update the total
				</button>
			</noscript>
		</form>
	)
}
