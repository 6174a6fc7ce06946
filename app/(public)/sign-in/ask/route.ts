import { backToForm } from '@/app/server/attempt'
import { tooMany } from '@/app/server/edge/limits'
import { plainPage } from '@/app/server/edge/plain-page'
import { senderOf } from '@/app/server/edge/screen'
import { formFields, seeOther } from '@/app/server/respond'
import { asked } from '@/app/server/sign-in/asked'
import { askCookie, remember } from '@/app/server/sign-in/cookies'
import { askHashOf, randomToken } from '@/app/server/sign-in/secrets'
import { viewer } from '@/app/server/sign-in/session'
import { stamp } from '@/app/server/start/clock'
import { addressOfHandle, askForLink } from '@/db/sign-in/ask'
import { addressField } from '@/lib/forms/fields'
import { localPath } from '@/lib/forms/local-path'

async function addressFrom(fields: Record<string, unknown>): Promise<string | undefined> {
	if (typeof fields.handle === 'string') return addressOfHandle(fields.handle)
	return addressField.safeParse(fields.address).data
}

/** Somebody asks for a link. Known or not, the answer is the same, and so is what it takes to give it. */
export async function POST(request: Request): Promise<Response> {
	const fields = (await formFields(request)) ?? {}
	const to = localPath(typeof fields.to === 'string' ? fields.to : undefined)
	const address = await addressFrom(fields)
	if (address === undefined)
		return backToForm(await viewer(), `/sign-in?${new URLSearchParams({ to })}`, {
			typed: { address: String(fields.address ?? '').slice(0, 254) },
			errors: { address: 'Give a mail address such as name@example.com.' },
		})
	const sender = senderOf(request.headers)
	const wait =
		(await tooMany('links asked by one sender', sender)) ??
		(await tooMany('links to one address asked by one sender', `${address} ${sender}`)) ??
		(await tooMany('links to one address', address))
	if (wait !== undefined) {
		const says = 'Several links were asked for already. Look for the newest mail, or wait a little and ask again.'
		return plainPage({ status: 429, says, retryAfter: wait }, request.headers.get('x-nonce') ?? '')
	}
	const ask = (await asked())?.ask ?? randomToken()
	// The sender is not woken: what it does for an address that is known could be felt in this answer and the next.
	await askForLink({ address, askHash: askHashOf(ask), to }, stamp())
	const mine = { ask, address: 'handle' in fields ? '' : address, handle: fields.handle ?? '', to }
	await remember(askCookie(), JSON.stringify(mine))
	return seeOther('/sign-in/sent')
}
