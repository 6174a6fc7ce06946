import type { Metadata } from 'next'
import { v7 } from 'uuid'
import { attemptFor } from '@/app/server/attempt'
import { hide } from '@/app/server/refusal'
import { studioPage } from '@/app/server/studio/studio-page'
import { ErrorSummary } from '@/app/ui/error-summary'
import { SettingsFields } from '@/app/ui/studio/settings-fields'
import { StudioFrame } from '@/app/ui/studio/studio-frame'
import { readPayWords } from '@/db/money/pay-words'
import { listStaff } from '@/db/studio/staff'
import { readSettings } from '@/db/studio/studio'
import type { Attempt } from '@/lib/forms/read'
import { saveSettings } from './actions'
import { PayWords } from './pay-words'
import { Staff } from './staff'

const none: Attempt = { typed: {}, errors: {} }

export const metadata: Metadata = { title: 'Settings' }

export default async function SettingsPage({ searchParams }: PageProps<'/studio/settings'>) {
	const { who, frame } = await studioPage('/studio/settings', 'change settings')
	const settings = await readSettings(who)
	if (settings === undefined) hide(who)
	const { form, saved } = await searchParams
	const attempt = await attemptFor(who, form)
	const isOfSettings = 'timeZone' in attempt.typed
	const isOfPay = 'payWords' in attempt.typed
	const { typed, errors } = isOfSettings ? attempt : none
	return (
		<StudioFrame {...frame} here="Settings">
			<h1 className="text-4xl font-extrabold tracking-tight">Settings</h1>
			<p className="mt-3">
				What prices are made from: <a href="/studio/rates">the rates</a>
			</p>
			{saved !== undefined && <p className="said mt-5">Saved.</p>}
			<form key={String(form)} action={saveSettings} className="max-w-xl" noValidate>
				<ErrorSummary errors={errors} />
				<input type="hidden" name="once" value={v7()} />
				<SettingsFields typed={{ ...settings, ...typed }} errors={errors} />
				<button type="submit" className="act first mt-8">
					Save the settings
				</button>
			</form>
			<PayWords key={`pay ${form}`} words={(await readPayWords(who)) ?? ''} attempt={isOfPay ? attempt : none} />
			<Staff members={await listStaff(who)} attempt={isOfSettings || isOfPay ? none : attempt} />
		</StudioFrame>
	)
}
