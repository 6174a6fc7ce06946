import { cookies } from 'next/headers'
import { env } from '../start/env'

const base = { httpOnly: true, sameSite: 'lax', path: '/' } as const

/** `__Host-` wherever the site is served over TLS, which a demo on loopback is not. */
const named = (name: string) => (env().isSecure ? `__Host-${name}` : name)

export const sessionCookie = () => ({ name: named('doorsill'), secure: env().isSecure, ...base })

const minutes = 60
/** The browser that asked for a link: what it asked with, the address that was typed and where to go after. */
export const askCookie = () => ({ name: named('doorsill-ask'), secure: env().isSecure, maxAge: 15 * minutes, ...base })

const days = 86_400
/** The browser itself, whoever signs in with it: as long as a cookie may last (RFC 6265bis draft, section 5.5). */
export const browserCookie = () => ({
	name: named('doorsill-browser'),
	secure: env().isSecure,
	maxAge: 400 * days,
	...base,
})

/** Takes a cookie back, with the marks that it was set with. */
export async function forget({ name, ...cookie }: { readonly name: string; readonly secure: boolean }): Promise<void> {
	const jar = await cookies()
	jar.set(name, '', { ...base, ...cookie, maxAge: 0 })
}

/** Sets a cookie with its marks. */
export async function remember({ name, ...cookie }: ReturnType<typeof askCookie>, value: string): Promise<void> {
	const jar = await cookies()
	jar.set(name, value, cookie)
}

/** Takes back every cookie that the browser sent, the sign-in library's own too. */
export async function forgetAll(): Promise<void> {
	const secure = env().isSecure
	for (const { name } of (await cookies()).getAll()) await forget({ name, secure })
}
