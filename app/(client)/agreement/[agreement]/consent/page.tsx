import type { Metadata } from 'next'
import { redirect } from 'next/navigation'
import { v7 } from 'uuid'
import { answerableAt } from '@/app/server/answers/agreement/agreement-page'
import { writeTo } from '@/app/server/answers/agreement/write-to'
import { attemptFor } from '@/app/server/attempt'
import { first } from '@/app/server/pages'
import { TickAlone } from '@/app/ui/agreement/tick-alone'
import { ClientFrame } from '@/app/ui/client-frame'
import { ErrorSummary } from '@/app/ui/error-summary'
import { consentFor, consentHash } from '@/lib/agreement/signing/consent'
import { defaultConsent } from '@/lib/agreement/signing/default-consent'
import { Refused } from '../told'

export const metadata: Metadata = { title: 'Records on a screen' }

/** What the law wants said before records are had on a screen alone, and one box; reached after the agreement was opened. */
export default async function Consent({ params, searchParams }: PageProps<'/agreement/[agreement]/consent'>) {
	const query = await searchParams
	const { who, me, path, page, document } = await answerableAt((await params).agreement, '/consent', query)
	if (page.opened.length === 0) redirect(`${path}?${new URLSearchParams({ told: 'not opened' })}`)
	if (page.consent !== undefined) redirect(`${path}/sign?document=${page.hash}`)
	const { typed: _, errors } = await attemptFor(who, query.form)
	const { studio, client } = document
	const shown = consentFor(defaultConsent, { studio: studio.name, client: client.name, writeTo: writeTo() })
	return (
		<ClientFrame studio={studio.name} who={me}>
			<div className="mx-auto max-w-2xl px-5 pt-8">
				<p>
					<a className="inline-flex min-h-11 items-center" href={path}>
						Back to the agreement
					</a>
				</p>
				<h1 className="mt-2 text-4xl">On a screen, or on paper?</h1>
				<p className="mt-2 text-lg">Step 1 of 2. Before you sign on a screen, read what that means. It is short.</p>
				<Refused told={first(query.told)} />
				<ErrorSummary errors={errors} labels={{ agrees: 'The box' }} />
				<dl className="mt-4">
					{shown.points.map(({ key, title, says }) => (
						<div key={key} className="border-b border-line py-3">
							<dt className="font-semibold">{title}</dt>
							<dd className="mt-1 wrap-anywhere">{says}</dd>
						</div>
					))}
				</dl>
				<form method="post" action={`${path}/answer/consent`} noValidate>
					<input type="hidden" name="once" value={v7()} />
					<input type="hidden" name="document" value={page.hash} />
					<input type="hidden" name="words" value={consentHash(shown)} />
					<TickAlone name="agrees" label={shown.agrees} error={errors.agrees} />
					<button type="submit" className="act first mt-6">
						Agree and go on
					</button>
				</form>
				<p className="mt-8">
					Rather paper? Write to <b className="wrap-anywhere">{writeTo()}</b> and we send it by post.
				</p>
			</div>
		</ClientFrame>
	)
}
