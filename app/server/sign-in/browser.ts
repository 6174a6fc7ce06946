import 'server-only'
import { cookies } from 'next/headers'
import type { Arrival } from '@/db/sign-in/arrival'
import { browserWords } from '@/lib/format/browser'
import { stamp } from '../start/clock'
import { browserCookie } from './cookies'
import { randomToken } from './secrets'

const shape = /^[\w-]{43}$/

/** The browser that somebody comes in with: known by its own cookie, else a new one. */
export async function arrivalOf(headers: Headers, by: Arrival['by']): Promise<Arrival> {
	const held = (await cookies()).get(browserCookie().name)?.value ?? ''
	const browser = shape.test(held) ? held : randomToken()
	return { browser, words: browserWords(headers.get('user-agent') ?? ''), by, stamp: stamp() }
}
