import type { Metadata } from 'next'
import { viewer } from '@/app/server/sign-in/session'
import { ErrorSummary } from '@/app/ui/error-summary'
import { TextField } from '@/app/ui/field'
import { PublicFrame } from '@/app/ui/public-frame'
import { addressOfHandle } from '@/db/sign-in/ask'
import { studioName } from '@/db/studio/studio'
import { masked } from '@/lib/format/address'
import { localPath } from '@/lib/forms/local-path'

export const metadata: Metadata = { title: 'Sign in' }

const wrong = 'Give a mail address such as name@example.com.'

export default async function SignIn({ searchParams }: PageProps<'/sign-in'>) {
	const { to, for: handle, wrong: isWrong } = await searchParams
	const known = typeof handle === 'string' ? await addressOfHandle(handle) : undefined
	const studio = (await studioName(await viewer())) ?? 'Doorsill'
	return (
		<PublicFrame studio={studio}>
			<h1 className="text-4xl">{known ? 'Open your door' : 'Sign in'}</h1>
			<p className="mt-3 text-lg">
				{known
					? `We send a link and a code to ${masked(known)}. No password.`
					: 'Give the address that the studio writes to. We send it a link and a code; there is no password.'}
			</p>
			{isWrong !== undefined && <ErrorSummary errors={{ address: wrong }} />}
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
						error={isWrong === undefined ? undefined : wrong}
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
