import 'server-only'
import { keepAttempt, readAttempt } from '@/db/house/attempts'
import type { Viewer } from '@/lib/access/viewer'
import { onceField } from '@/lib/forms/fields'
import type { Attempt } from '@/lib/forms/read'
import { seeOther } from './respond'
import { stamp } from './start/clock'

const nothing: Attempt = { typed: {}, errors: {} }

/** What was typed into a form that went wrong, by the key in the address of the page; nothing for any other key. */
export async function attemptFor(viewer: Viewer, key: string | string[] | undefined): Promise<Attempt> {
	const known = onceField.safeParse(key)
	return known.success ? ((await readAttempt(viewer, known.data)) ?? nothing) : nothing
}

/** Back to the form with everything that was typed and what is wrong with it. */
export async function backToForm(viewer: Viewer, path: string, attempt: Attempt): Promise<Response> {
	const key = stamp().id<'once'>()
	await keepAttempt(viewer, key, attempt, stamp())
	return seeOther(`${path}${path.includes('?') ? '&' : '?'}form=${key}`)
}
