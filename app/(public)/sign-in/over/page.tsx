import type { Metadata } from 'next'
import { asked } from '@/app/server/sign-in/asked'
import { viewer } from '@/app/server/sign-in/session'
import { PublicFrame } from '@/app/ui/public-frame'
import { studioName, whoIs } from '@/db/studio/studio'

export const metadata: Metadata = { title: 'That link is over' }

export default async function Over() {
	const who = await viewer()
	const me = await whoIs(who)
	const mine = (await asked()) ?? (me && { to: '/', handle: '', address: me.address })
	return (
		<PublicFrame studio={(await studioName(who)) ?? 'Doorsill'}>
			<h1 className="text-4xl">That link is over</h1>
			<p className="mt-3 text-lg">
				A link works once and for ten minutes; a fresh one takes its place. Nothing has happened.
			</p>
			{me && (
				<p className="mt-6 text-lg">
					You are signed in already: <a href="/">to your door</a>.
				</p>
			)}
			{mine === undefined ? (
				<p className="mt-8">
					<a href="/sign-in" className="act first">
						Send me a fresh link
					</a>
				</p>
			) : (
				<form method="post" action="/sign-in/ask" className="mt-8">
					<input type="hidden" name="to" value={mine.to} />
					<input
						type="hidden"
						name={mine.handle === '' ? 'address' : 'handle'}
						value={mine.handle === '' ? mine.address : mine.handle}
					/>
					<button type="submit" className="act first">
						Send me a fresh link
					</button>
					{mine.address !== '' && <p className="mt-3 wrap-anywhere text-soft">It goes to {mine.address}.</p>}
				</form>
			)}
		</PublicFrame>
	)
}
