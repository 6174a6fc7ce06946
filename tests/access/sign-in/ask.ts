import { expect } from 'vitest'
import type { PersonKey } from '@/demo/cast/people'
import { open } from '../site/here'
import { type Letter, linkIn } from '../site/postbox'
import { mailIsOut } from '../site/snapshot'
import { browser } from './browser'

export const addressOf = (key: PersonKey) => open.site.cast.people[key].address

const turns = new Map<string, number>()

/** Asks for a link with an address and waits for the mail. */
export async function ask(
	address: string,
	to = '/home',
	as = browser(),
): Promise<{ letter: Letter; as: ReturnType<typeof browser> }> {
	const said = await as.post('/sign-in/ask', [
		['address', address],
		['to', to],
	])
	expect(said.headers.location).toBe('/sign-in/sent')
	const before = turns.get(address) ?? 0
	turns.set(address, before + 1)
	const letter = await open.postbox.next(address, /link to sign in/, before)
	await mailIsOut(open.site.folder)
	return { letter, as }
}

/** Where a letter's link leads, and where its button does. */
export const pathIn = (letter: Letter) => {
	const { pathname, search } = new URL(linkIn(letter, '/sign-in/confirm'))
	return { confirm: `${pathname}${search}`, use: `/api/auth/callback/email${search}` }
}
