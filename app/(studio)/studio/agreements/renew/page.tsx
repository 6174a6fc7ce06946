import type { Metadata } from 'next'
import { v7 } from 'uuid'
import { attemptFor } from '@/app/server/attempt'
import { hide } from '@/app/server/refusal'
import { stamp } from '@/app/server/start/clock'
import { studioPage } from '@/app/server/studio/studio-page'
import { ErrorSummary } from '@/app/ui/error-summary'
import { TextField } from '@/app/ui/field'
import { Came } from '@/app/ui/studio/many/came'
import { ManyForm } from '@/app/ui/studio/many/many-form'
import { one } from '@/app/ui/studio/settings-fields'
import { StudioFrame } from '@/app/ui/studio/studio-frame'
import { endingIn } from '@/db/agreements/studio/renew'
import { renewAskText } from '@/lib/agreement/studio/form/renew-ask-text'
import { renewalAsk, renewalOf } from '@/lib/agreement/studio/form/renew-form'
import { moneyFormat } from '@/lib/format/money'
import { addDays } from '@/lib/units/day'
import { Ask } from './ask'
import { Rows } from './rows'

export const metadata: Metadata = { title: 'Renew' }

const path = '/studio/agreements/renew'
const threeWeeks = 21
const done = 'issued'

/** Every agreement that ends in a year, beside what it would be for the next; all that are not renewed yet are ticked. */
export default async function Renew({ searchParams }: PageProps<'/studio/agreements/renew'>) {
	const { who, frame } = await studioPage(path, 'change agreements')
	const { form, done: key, ...given } = await searchParams
	const now = stamp()
	const ask = renewalAsk(given)
	const year = ask.year ?? Number(now.at.slice(0, 4))
	const found = await endingIn(who, year, () => renewalOf(ask), now)
	if (found === undefined) hide(who)
	const came = await attemptFor(who, key)
	const { typed, errors } = await attemptFor(who, form)
	const open = found.endings.filter(({ renewedBy }) => renewedBy === null).length
	return (
		<StudioFrame {...frame} here="Agreements">
			<p>
				<a href="/studio/agreements" className="inline-flex min-h-11 items-center">
					All agreements
				</a>
			</p>
			<h1 className="text-4xl font-extrabold tracking-tight">Renew for another year</h1>
			<Came done={done} went={[came.typed.published ?? []].flat()} not={Object.values(came.errors)} />
			<Ask ask={ask} year={year} />
			<ErrorSummary errors={errors} />
			<ManyForm action={`${path}/send`} once={v7()} count={open} done={done} label="Issue what is ticked">
				{found.endings.length === 0 ? (
					<p className="mt-6 text-lg">No agreement that both have signed ends in {year}.</p>
				) : (
					<>
						<input type="hidden" name="ask" value={renewAskText({ ...ask, year })} />
						<Rows
							key={`${JSON.stringify(ask)} ${form}`}
							endings={found.endings}
							money={moneyFormat(found.currency)}
							typed={typed}
							errors={errors}
						/>
						<div className="max-w-xs">
							<TextField
								name="signBy"
								label="To be signed by"
								type="date"
								value={one(typed, 'signBy') || addDays(found.today, threeWeeks)}
								error={errors.signBy}
							/>
						</div>
					</>
				)}
			</ManyForm>
		</StudioFrame>
	)
}
