import type { Metadata } from 'next'
import { redirect } from 'next/navigation'
import { asked } from '@/app/server/sign-in/asked'
import { askHashOf, linkHash } from '@/app/server/sign-in/secrets'
import { viewer } from '@/app/server/sign-in/session'
import { now } from '@/app/server/start/clock'
import { PublicFrame } from '@/app/ui/public-frame'
import { holderOfLink } from '@/db/sign-in/token'
import { studioName } from '@/db/studio/studio'
import { localPath } from '@/lib/forms/local-path'

export const metadata: Metadata = { title: 'Sign in' }

/** Opening the link uses nothing up, whoever opens it: a person presses the button. */
export default async function Confirm({ searchParams }: PageProps<'/sign-in/confirm'>) {
	const { token, callbackUrl } = await searchParams
	const holder = typeof token === 'string' ? await holderOfLink(linkHash(token), now()) : undefined
	if (holder === undefined) redirect('/sign-in/over')
	const mine = await asked()
	const isOtherDevice = mine === undefined || askHashOf(mine.ask) !== holder.askHash
	const to = localPath(typeof callbackUrl === 'string' ? callbackUrl : undefined)
	const action = `/api/auth/callback/email?${new URLSearchParams({ token: String(token), callbackUrl: to })}`
	return (
		<PublicFrame studio={(await studioName(await viewer())) ?? 'Doorsill'}>
			<h1 className="text-4xl">Is this you?</h1>
			<p className="mt-3 text-lg">
				The link was sent to <b className="wrap-anywhere">{holder.address}</b>.
			</p>
			{isOtherDevice && (
				<p className="said mt-6">
					It was asked for in another browser or on another device. If that was not you, close this page: nothing has
					happened yet.
				</p>
			)}
			<form method="post" action={action} className="mt-8">
				<button type="submit" className="act first">
					{isOtherDevice ? 'It was me: sign in here' : 'Sign in'}
				</button>
			</form>
		</PublicFrame>
	)
}
