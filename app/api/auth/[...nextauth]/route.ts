import type { NextRequest } from 'next/server'
import { tooMany } from '@/app/server/edge/limits'
import { senderOf } from '@/app/server/edge/screen'
import { json, refuse, seeOther } from '@/app/server/respond'
import { handBack } from '@/app/server/sign-in/auth'
import { viewer } from '@/app/server/sign-in/session'
import { signIn } from '@/app/server/sign-in/sign-in'

type Context = RouteContext<'/api/auth/[...nextauth]'>

const isCallback = (path: string) => path === 'callback/email'

/** Of the library's own addresses only these are let through: the session, its token against forgery, and the way in. */
export async function GET(request: NextRequest, { params }: Context): Promise<Response> {
	const { nextauth } = await params
	const path = nextauth.join('/')
	if (isCallback(path)) return seeOther(`/sign-in/confirm${request.nextUrl.search}`)
	// The library knows the absolute end of a session alone: idle ones and closed doors are for the viewer to know.
	if (path === 'session' && (await viewer()).is === 'nobody') return json({})
	return path === 'session' || path === 'csrf' ? handBack(request, nextauth) : refuse(request, 'hidden')
}

export async function POST(request: NextRequest, { params }: Context): Promise<Response> {
	const { nextauth } = await params
	const path = nextauth.join('/')
	if (path === 'signout') return handBack(request, nextauth)
	if (!isCallback(path)) return refuse(request, 'hidden')
	const wait = await tooMany('confirmations of one sender', senderOf(request.headers))
	return wait === undefined ? signIn(request, 'link') : seeOther('/sign-in/over?often')
}
