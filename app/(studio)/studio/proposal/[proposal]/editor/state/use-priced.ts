'use client'
import { useEffect, useState } from 'react'
import type { DraftText } from '@/lib/forms/draft-form'
import type { FieldErrors } from '@/lib/forms/read'
import type { Desk } from '@/lib/proposal/desk/desk'

const pauseMs = 250
const againMs = 2000

type Answer = Desk | { readonly errors: FieldErrors }
export type Priced = { readonly desk: Desk | undefined; readonly errors: FieldErrors; readonly isBehind: boolean }

type Asked = { readonly draft: DraftText; readonly measured: boolean }

async function ask(path: string, asked: Asked, signal: AbortSignal): Promise<Answer | undefined> {
	const response = await fetch(path, {
		method: 'POST',
		signal,
		headers: { 'content-type': 'application/json' },
		body: JSON.stringify(asked),
	})
	return response.status === 200 || response.status === 422 ? response.json() : undefined
}

/** Asks the server for price and pictures of what is on the desk; the next keystroke aborts the question. */
export function usePriced(path: string, draft: DraftText, measured: boolean): Priced {
	const [priced, setPriced] = useState<Priced>({ desk: undefined, errors: {}, isBehind: true })
	useEffect(() => {
		const abort = new AbortController()
		setPriced((before) => ({ ...before, isBehind: true }))
		const tell = (answer: Answer) => {
			if ('errors' in answer) setPriced(({ desk }) => ({ desk, errors: answer.errors, isBehind: false }))
			else setPriced({ desk: answer, errors: {}, isBehind: false })
		}
		let timer: ReturnType<typeof setTimeout> | undefined
		const askIn = (waitMs: number) => {
			timer = setTimeout(() => {
				ask(path, { draft, measured }, abort.signal)
					.then((answer) => (answer === undefined ? askAgain() : tell(answer)))
					.catch(askAgain)
			}, waitMs)
		}
		// Out of reach or turned away: the price beside the draft must not stay that of an older text.
		const askAgain = () => {
			if (!abort.signal.aborted) askIn(againMs)
		}
		askIn(pauseMs)
		return () => {
			clearTimeout(timer)
			abort.abort()
		}
	}, [path, draft, measured])
	return priced
}
