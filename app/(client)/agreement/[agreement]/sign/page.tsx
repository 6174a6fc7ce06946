import type { Metadata } from 'next'
import { redirect } from 'next/navigation'
import { v7 } from 'uuid'
import { answerableAt } from '@/app/server/answers/agreement/agreement-page'
import { attemptFor } from '@/app/server/attempt'
import { first } from '@/app/server/pages'
import { sessionToken } from '@/app/server/sign-in/session'
import { now } from '@/app/server/start/clock'
import { StrokeField } from '@/app/ui/agreement/stroke-field'
import { ClientFrame } from '@/app/ui/client-frame'
import { ErrorSummary } from '@/app/ui/error-summary'
import { TextField } from '@/app/ui/field'
import { one } from '@/app/ui/studio/settings-fields'
import { ownProof } from '@/db/sign-in/proof'
import { isFresh } from '@/lib/agreement/signing/fresh'
import { fullDay } from '@/lib/format/day'
import { moment } from '@/lib/units/day'
import { Refused } from '../told'
import { ProveAgain } from './prove-again'

export const metadata: Metadata = { title: 'Sign the agreement' }

/** A typed name and what it means; a drawing if they like. Whoever signed in more than a day ago proves their mailbox first. */
export default async function Sign({ params, searchParams }: PageProps<'/agreement/[agreement]/sign'>) {
	const query = await searchParams
	const { who, me, path, page, document } = await answerableAt((await params).agreement, '/sign', query)
	if (page.consent?.words === undefined) redirect(`${path}/consent?document=${page.hash}`)
	const proof = await ownProof(who, await sessionToken())
	const isProven = proof !== undefined && isFresh(proof.at, moment(now()))
	const { typed, errors } = await attemptFor(who, query.form)
	return (
		<ClientFrame studio={document.studio.name} who={me}>
			<div className="mx-auto max-w-2xl px-5 pt-8">
				<p>
					<a className="inline-flex min-h-11 items-center" href={path}>
						Back to the agreement
					</a>
				</p>
				{isProven ? (
					<>
						<h1 className="mt-2 text-4xl">Sign the agreement</h1>
						<p className="mt-2 text-lg">
							Step 2 of 2. {document.client.name} with {document.studio.name}, from {fullDay(document.from)} to{' '}
							{fullDay(document.to)}. It is signed only when you press the button below.
						</p>
						<Refused told={first(query.told)} />
						<ErrorSummary errors={errors} labels={{ name: 'Your name', stroke: 'Your drawing' }} />
						<form method="post" action={`${path}/answer/sign`} noValidate>
							<input type="hidden" name="once" value={v7()} />
							<input type="hidden" name="document" value={page.hash} />
							<TextField
								name="name"
								label="Your name"
								hint="Type it in full: it is your signature."
								autoComplete="name"
								value={one(typed, 'name')}
								error={errors.name}
							/>
							<StrokeField value={one(typed, 'stroke') ?? ''} error={errors.stroke} />
							<p className="mt-6 text-lg">{page.consent.words.intends}</p>
							<button type="submit" className="act first mt-6">
								Sign the agreement
							</button>
						</form>
					</>
				) : (
					<ProveAgain address={me?.address ?? ''} to={`${path}/sign`} />
				)}
			</div>
		</ClientFrame>
	)
}
