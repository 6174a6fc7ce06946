import { z } from 'zod'
import type { Entry } from './entry'

/** What came of sending; only "sent" says that the studio has it. */
export type Went =
	| { readonly is: 'sent'; readonly place: string }
	| { readonly is: 'refused'; readonly errors: Readonly<Record<string, string>> }
	| { readonly is: 'signed out' }
	| { readonly is: 'out of reach' }

const keptReply = z.object({ kept: z.string() })
const refusedReply = z.object({ errors: z.record(z.string(), z.string()) })

const longestMs = 60_000

/** What a status means that says nothing of its own. */
const says: ReadonlyMap<number, string> = new Map([
	[403, 'The studio does not let you write this down.'],
	[404, 'This client or this place is no longer there.'],
	[413, 'The photo is larger than 15 MB. Take another one.'],
])

async function read(response: Response): Promise<Went> {
	if (response.status === 200) return { is: 'sent', place: keptReply.parse(await response.json()).kept }
	if (response.status === 422) return { is: 'refused', errors: refusedReply.parse(await response.json()).errors }
	if (response.status === 401) return { is: 'signed out' }
	const told = says.get(response.status)
	return told === undefined ? { is: 'out of reach' } : { is: 'refused', errors: { form: told } }
}

function formOf({ id, person, fields }: Entry, photo: Blob | null): FormData {
	const body = new FormData()
	for (const [name, value] of Object.entries(fields)) body.set(name, value)
	body.set('once', id)
	body.set('by', person)
	if (photo !== null) body.set('photo', photo, 'front.jpg')
	return body
}

/** Sends one entry under its own key: however often it arrives, it is taken once. */
export async function send(entry: Entry, photo: Blob | null): Promise<Went> {
	if (!navigator.onLine) return { is: 'out of reach' }
	try {
		const response = await fetch(`/studio/clients/${entry.client}/kerb/keep`, {
			method: 'POST',
			headers: { accept: 'application/json' },
			body: formOf(entry, photo),
			signal: AbortSignal.timeout(longestMs),
		})
		return await read(response)
	} catch {
		return { is: 'out of reach' }
	}
}
