import { useCallback, useEffect, useRef, useState } from 'react'
import type { Entry } from './entry'
import { send } from './send'
import { entriesOf, letGo, photoOf, putEntry } from './store'

export type Reach = 'at rest' | 'sending' | 'out of reach' | 'signed out' | 'keeps nothing'
/** What was sent from this page since it was opened. */
export type SentEntry = Entry & { readonly place: string }

const againMs = 20_000

/** Tries one after the other, and stops where the next would fare alike. */
async function sendEach(person: string, sent: (entry: SentEntry) => void): Promise<Reach> {
	for (const entry of (await entriesOf(person)).filter(({ state }) => state === 'waiting')) {
		const went = await send(entry, await photoOf(entry.id))
		if (went.is === 'signed out' || went.is === 'out of reach') return went.is
		if (went.is === 'refused') await putEntry({ ...entry, state: 'refused', errors: went.errors })
		else {
			await letGo(entry.id)
			sent({ ...entry, place: went.place })
		}
	}
	return 'at rest'
}

/** What this browser keeps of a person’s, sent whenever there is a way: at once, when reception or the person is back, now and then. */
export function useKept(person: string) {
	const [entries, setEntries] = useState<readonly Entry[]>([])
	const [sent, setSent] = useState<readonly SentEntry[]>([])
	const [reach, setReach] = useState<Reach>('at rest')
	const isSending = useRef(false)
	const look = useCallback(async () => setEntries(await entriesOf(person)), [person])
	const sendAll = useCallback(async () => {
		if (isSending.current) return
		isSending.current = true
		setReach('sending')
		try {
			setReach(await sendEach(person, (entry) => setSent((before) => [...before, entry])))
			await look()
		} catch {
			setReach('keeps nothing')
		} finally {
			isSending.current = false
		}
	}, [person, look])
	useEffect(() => {
		const back = () => {
			if (document.visibilityState === 'visible') void sendAll()
		}
		back()
		addEventListener('online', back)
		document.addEventListener('visibilitychange', back)
		return () => {
			removeEventListener('online', back)
			document.removeEventListener('visibilitychange', back)
		}
	}, [sendAll])
	const waits = entries.some(({ state }) => state === 'waiting')
	useEffect(() => {
		if (!waits || reach !== 'out of reach') return
		const timer = setTimeout(() => void sendAll(), againMs)
		return () => clearTimeout(timer)
	}, [waits, reach, sendAll])
	const drop = async (id: string) => {
		await letGo(id)
		await look()
	}
	return { entries, sent, reach, look, sendAll, drop, lost: () => setReach('keeps nothing') }
}
