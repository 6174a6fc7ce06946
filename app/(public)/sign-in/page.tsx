import type { Metadata } from 'next'
import { attemptFor } from '@/app/server/attempt'
import { viewer } from '@/app/server/sign-in/session'
import { env } from '@/app/server/start/env'
import { ErrorSummary } from '@/app/ui/error-summary'
import { TextField } from '@/app/ui/field'
import { PublicFrame } from '@/app/ui/public-frame'
import { one } from '@/app/ui/studio/settings-fields'
import { addressOfHandle } from '@/db/sign-in/ask'
import { studioName } from '@/db/studio/studio'
import { masked } from '@/lib/format/address'
import { localPath } from '@/lib/forms/local-path'
import { coverPath, coverSize, isCoverKey } from '@/lib/forms/pictures/cover-address'

/** A link to a design shows its cover where it is passed on: what the link itself names, and nothing that is looked up. */
export async function generateMetadata({ searchParams }: PageProps<'/sign-in'>): Promise<Metadata> {
	const { cover } = await searchParams
	if (typeof cover !== 'string' || !isCoverKey(cover)) return { title: 'Sign in' }
	const images = [{ url: `${env().siteUrl}${coverPath(cover)}`, ...coverSize, alt: 'A design for the season' }]
	return {
		title: 'Sign in',
		openGraph: { title: 'A design for your door', images },
		twitter: { card: 'summary_large_image' },
	}
}

export default async function SignIn({ searchParams }: PageProps<'/sign-in'>) {
	const { to, for: handle, form } = await searchParams
	const who = await viewer()
	const { typed, errors } = await attemptFor(who, form)
	const known = typeof handle === 'string' ? await addressOfHandle(handle) : undefined
	const studio = (await studioName(who)) ?? 'Doorsill'
	return (
		<PublicFrame studio={studio}>
			<h1 className="text-4xl">{known ? 'Open your door' : 'Sign in'}</h1>
			<p className="mt-3 text-lg">
				{known
					? `We send a link and a code to ${masked(known)}. No password.`
					: 'Give the address that the studio writes to. We send it a link and a code; there is no password.'}
			</p>
			<ErrorSummary errors={errors} />
			<form method="post" action="/sign-in/ask" noValidate>
				<input type="hidden" name="to" value={localPath(typeof to === 'string' ? to : undefined)} />
				{known ? (
					<input type="hidden" name="handle" value={String(handle)} />
				) : (
					<TextField
						name="address"
						label="Mail address"
						type="email"
						autoComplete="email"
						inputMode="email"
						value={one(typed, 'address')}
						error={errors.address}
					/>
				)}
				<button type="submit" className="act first mt-6">
					Send me the link
				</button>
			</form>
			{known && (
				<p className="mt-6">
					Not your address? <a href="/sign-in">Sign in with another</a>
				</p>
			)}
		</PublicFrame>
	)
}
