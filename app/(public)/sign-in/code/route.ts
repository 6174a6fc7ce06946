import { NextRequest } from 'next/server'
import { tooMany } from '@/app/server/edge/limits'
import { senderOf } from '@/app/server/edge/screen'
import { formFields, seeOther } from '@/app/server/respond'
import { asked } from '@/app/server/sign-in/asked'
import { askHashOf, codeHash, linkHash, randomToken } from '@/app/server/sign-in/secrets'
import { signIn } from '@/app/server/sign-in/sign-in'
import { now } from '@/app/server/start/clock'
import { env } from '@/app/server/start/env'
import { tryCode } from '@/db/sign-in/token'

/** A code, typed in the browser that asked for it. The right one becomes a link that only this request knows, and is used. */
export async function POST(request: Request): Promise<Response> {
	const mine = await asked()
	if (mine === undefined) return seeOther('/sign-in')
	if ((await tooMany('confirmations of one sender', senderOf(request.headers))) !== undefined)
		return seeOther('/sign-in/sent?code=over')
	const typed = String((await formFields(request))?.code ?? '')
		.replace(/\D/g, '')
		.slice(0, 12)
	const askHash = askHashOf(mine.ask)
	const token = randomToken()
	const outcome = await tryCode(askHash, codeHash(typed, askHash), linkHash(token), now())
	if (outcome !== 'right') return seeOther(`/sign-in/sent?code=${outcome}`)
	const url = new URL('/api/auth/callback/email', env().siteUrl)
	url.searchParams.set('token', token)
	url.searchParams.set('callbackUrl', mine.to)
	return signIn(new NextRequest(url, { method: 'POST', headers: request.headers }), 'code')
}
