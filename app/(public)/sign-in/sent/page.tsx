import type { Metadata } from 'next'
import { redirect } from 'next/navigation'
import { asked } from '@/app/server/sign-in/asked'
import { viewer } from '@/app/server/sign-in/session'
import { ErrorSummary } from '@/app/ui/error-summary'
import { described, Field } from '@/app/ui/field'
import { PublicFrame } from '@/app/ui/public-frame'
import { studioName } from '@/db/studio/studio'

export const metadata: Metadata = { title: 'Look for our mail' }

const errors = {
	wrong: 'That is not the code in the newest mail. Look once more.',
	over: 'That code is over. Ask for a fresh one below.',
} as const

export default async function Sent({ searchParams }: PageProps<'/sign-in/sent'>) {
	const mine = await asked()
	if (mine === undefined) redirect('/sign-in')
	const { code } = await searchParams
	const error = code === 'wrong' || code === 'over' ? errors[code] : undefined
	return (
		<PublicFrame studio={(await studioName(await viewer())) ?? 'Doorsill'}>
			<h1 className="text-4xl">Look for our mail</h1>
			<p className="mt-3 text-lg">
				If {mine.address === '' ? 'your address' : <b className="wrap-anywhere">{mine.address}</b>} is known here, a
				link and a code are on their way. Both work for ten minutes, once.
			</p>
			{error && <ErrorSummary errors={{ code: error }} />}
			<form method="post" action="/sign-in/code" noValidate>
				<Field name="code" label="Code from the mail" hint="Eight digits. Or open the link in the mail." error={error}>
					<input
						className="box text-2xl tracking-widest"
						inputMode="numeric"
						autoComplete="one-time-code"
						{...described({ name: 'code', hint: 'code', error })}
					/>
				</Field>
				<button type="submit" className="act first mt-6">
					Sign in
				</button>
			</form>
			<form method="post" action="/sign-in/ask" className="mt-10">
				<input type="hidden" name="to" value={mine.to} />
				<input
					type="hidden"
					name={mine.handle === '' ? 'address' : 'handle'}
					value={mine.handle === '' ? mine.address : mine.handle}
				/>
				<p>No mail after a minute or two? Look among unwanted mail, or</p>
				<button type="submit" className="does">
					send a fresh link
				</button>{' '}
				· <a href="/sign-in">use another address</a>
			</form>
		</PublicFrame>
	)
}
