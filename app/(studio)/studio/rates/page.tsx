import type { Metadata } from 'next'
import { v7 } from 'uuid'
import { attemptFor } from '@/app/server/attempt'
import { hide } from '@/app/server/refusal'
import { stamp } from '@/app/server/start/clock'
import { studioPage } from '@/app/server/studio/studio-page'
import { ErrorSummary } from '@/app/ui/error-summary'
import { StudioFrame } from '@/app/ui/studio/studio-frame'
import { rateEffects } from '@/db/studio/rate-effects'
import { readRates } from '@/db/studio/save-rates'
import { readSettings } from '@/db/studio/studio'
import { ratesText, saveRatesForm } from '@/lib/forms/rates/rates-form'
import { saveRates } from './actions'
import { Effects } from './effects'
import { RateFields } from './rate-fields'

export const metadata: Metadata = { title: 'Rates' }

export default async function RatesPage({ searchParams }: PageProps<'/studio/rates'>) {
	const { who, frame } = await studioPage('/studio/rates', 'change settings')
	const [standing, settings] = [await readRates(who), await readSettings(who)]
	if (standing === undefined || settings === undefined) hide(who)
	const { form, saved } = await searchParams
	const { typed, errors } = await attemptFor(who, form)
	const asked = saveRatesForm.safeParse(typed)
	const effects = asked.success ? await rateEffects(who, asked.data.rates, stamp()) : undefined
	const texts = 'version' in typed ? typed : ratesText(standing.rates)
	return (
		<StudioFrame {...frame} here="Settings">
			<h1 className="text-4xl font-extrabold tracking-tight">Rates</h1>
			<p className="mt-3 max-w-2xl text-soft">
				What every price is made from. Version {standing.version} stands. What is published keeps the rates that made
				it; drafts follow the new ones at once.
			</p>
			{saved !== undefined && <p className="said mt-5">Saved: version {standing.version}.</p>}
			<form key={String(form)} action={saveRates} noValidate>
				<ErrorSummary errors={errors} />
				<input type="hidden" name="once" value={v7()} />
				<input type="hidden" name="version" value={standing.version} />
				{/* The first button is what Enter presses: it shows and saves nothing. */}
				<button type="submit" name="step" value="see" className="sr-only" tabIndex={-1} aria-hidden="true">
					See what this does
				</button>
				{effects && (
					<Effects effects={effects} currency={settings.currency} floor={asked.data?.rates.marginFloorPercent ?? 0} />
				)}
				<RateFields texts={texts} stands={ratesText(standing.rates)} errors={errors} />
				<button type="submit" name="step" value="see" className="act first mt-8">
					See what this does
				</button>
			</form>
		</StudioFrame>
	)
}
