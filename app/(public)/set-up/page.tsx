import type { Metadata } from 'next'
import { notFound } from 'next/navigation'
import { v7 } from 'uuid'
import { attemptFor } from '@/app/server/attempt'
import { linkHash } from '@/app/server/sign-in/secrets'
import { viewer } from '@/app/server/sign-in/session'
import { ErrorSummary } from '@/app/ui/error-summary'
import { TextField } from '@/app/ui/field'
import { PublicFrame } from '@/app/ui/public-frame'
import { one, SettingsFields } from '@/app/ui/studio/settings-fields'
import { isSetUpLink } from '@/db/start/set-up'

export const metadata: Metadata = { title: 'Set up the studio' }

export default async function SetUp({ searchParams }: PageProps<'/set-up'>) {
	const { token, form } = await searchParams
	if (typeof token !== 'string' || !(await isSetUpLink(linkHash(token)))) notFound()
	const { typed, errors } = await attemptFor(await viewer(), form)
	return (
		<PublicFrame studio="Doorsill">
			<h1 className="text-4xl">Set up your studio</h1>
			<p className="mt-3 text-lg">This link works once. After it you sign in by mail, like everybody.</p>
			<ErrorSummary errors={errors} />
			<form method="post" action="/set-up/make" noValidate>
				<input type="hidden" name="token" value={token} />
				<input type="hidden" name="once" value={v7()} />
				<SettingsFields typed={typed} errors={errors} />
				<TextField
					name="designer"
					label="Your name"
					autoComplete="name"
					value={one(typed, 'designer')}
					error={errors.designer}
				/>
				<TextField
					name="address"
					label="Your mail address"
					hint="Links to sign in go here."
					type="email"
					autoComplete="email"
					inputMode="email"
					value={one(typed, 'address')}
					error={errors.address}
				/>
				<button type="submit" className="act first mt-8">
					Make this studio mine
				</button>
			</form>
		</PublicFrame>
	)
}
