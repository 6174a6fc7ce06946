import type { PersonKey } from '@/demo/cast/people'
import type { Body, called } from '../ask/forms'
import { type Sending, send } from '../ask/send'
import { open } from '../site/here'
import { openSession } from '../site/people'

type Key = PersonKey | 'designer' | 'helper'

/** Asks as somebody of the cast, in a session of its own. */
export const as = (key: Key) => {
	const session = openSession(open.site.folder, open.site.cast.people[key].id)
	return (path: string, sending: Sending = {}) => send(open.site.url, path, { session, ...sending })
}

export const post = (body: Body | ReturnType<typeof called>): Sending => ({ method: 'POST', ...body })
