'use client'
import { useRouter } from 'next/navigation'
import { type FormEvent, type ReactNode, useState } from 'react'
import { Came } from './came'
import { type Outcome, sendPicked } from './send-picked'

type Props = {
	readonly action: string
	readonly once: string
	readonly count: number
	/** What is done to each, in a word: published, issued. */
	readonly done: string
	/** Of the button. */
	readonly label: string
	readonly children: ReactNode
}
type Going = {
	readonly of: number
	readonly outcomes: readonly Outcome[]
	readonly isOver: boolean
	readonly says: string
}

/** One form for all that is ticked; with scripts it sends a few at a time and says how far it is. */
export function ManyForm({ action, once, count, done, label, children }: Props) {
	const router = useRouter()
	const [going, setGoing] = useState<Going>()
	async function send(event: FormEvent<HTMLFormElement>) {
		const form = new FormData(event.currentTarget)
		const picks = form.getAll('pick').map(String)
		// None ticked: the server says so.
		if (picks.length === 0) return
		event.preventDefault()
		let outcomes: readonly Outcome[] = []
		setGoing({ of: picks.length, outcomes, isOver: false, says: '' })
		const says = await sendPicked({ action, form, picks }, (more) => {
			outcomes = [...outcomes, ...more]
			setGoing({ of: picks.length, outcomes, isOver: false, says: '' })
		})
		setGoing({ of: picks.length, outcomes, isOver: true, says })
		router.refresh()
	}
	const isBusy = going !== undefined && !going.isOver
	return (
		<form method="post" action={action} onSubmit={(event) => void send(event)} aria-busy={isBusy}>
			<input type="hidden" name="once" value={once} />
			<div aria-live="polite">{going && <HowFar going={going} done={done} />}</div>
			{children}
			{count > 0 && (
				<button type="submit" className="act first mt-6" disabled={isBusy}>
					{label}
				</button>
			)}
		</form>
	)
}

function HowFar({ going: { of, outcomes, isOver, says }, done }: { readonly going: Going; readonly done: string }) {
	const went = outcomes.filter((each) => each.says === null).map(({ name }) => name)
	const not = outcomes.flatMap(({ name, says: why }) => (why === null ? [] : [`${name}: ${why}`]))
	if (isOver) return <Came done={done} went={went} not={says === '' ? not : [...not, says]} />
	return (
		<p className="said mt-5">
			<label htmlFor="how-far">
				{outcomes.length} of {of} gone through
			</label>
			<progress id="how-far" className="mt-2 block w-full" max={of} value={outcomes.length} />
		</p>
	)
}
