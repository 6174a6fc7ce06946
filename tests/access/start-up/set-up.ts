import { v7 } from 'uuid'
import { expect } from 'vitest'
import { multipart } from '../ask/forms'
import { send } from '../ask/send'
import { aliveIn, hostile, isStored } from '../look/hostile'

/** A set-up with one field of what it is not for comes back with what was typed; the link stays good. */
export async function refusesBadSetUp(origin: string, made: Readonly<Record<string, string>>): Promise<void> {
	const kinds = {
		name: 'words',
		designer: 'words',
		address: 'address',
		timeZone: 'choice',
		currency: 'choice',
	} as const
	for (const [field, kind] of Object.entries(kinds))
		for (const { what, value } of hostile.filter((each) => !isStored(kind, each))) {
			const typed = Object.entries({ ...made, once: v7() }).map(
				([name, words]) => [name, name === field ? value : words] as const,
			)
			const back = await send(origin, '/set-up/make', { method: 'POST', ...multipart(typed) })
			const { status, body } = await send(origin, String(back.headers.location))
			const found = [field, what, back.status, status, aliveIn(body), body.includes('role="alert"')]
			expect(found).toEqual([field, what, 303, 200, [], true])
		}
}
