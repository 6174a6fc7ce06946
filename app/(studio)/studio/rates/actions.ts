'use server'
import { stamp } from '@/app/server/start/clock'
import { isDenied, refused, studioAction } from '@/app/server/studio/studio-action'
import { saveRates as keepRates } from '@/db/studio/save-rates'
import { saveRatesForm } from '@/lib/forms/rates/rates-form'

const page = () => '/studio/rates'

const told = {
	'changed elsewhere': 'These rates were changed elsewhere meanwhile. Open the page again to see them.',
	'nothing changed': 'Nothing is different from the rates that stand.',
} as const

/** To see what the numbers would do they come back to the page as they were typed, and nothing is kept. */
export async function saveRates(form: FormData): Promise<void> {
	await studioAction(
		form,
		{ act: 'change settings', schema: saveRatesForm, page },
		async (who, { once, version, step, rates }) => {
			if (step === 'see') return { errors: {} }
			const saved = await keepRates(who, { version, rates }, stamp(once))
			if (saved.ok) return { to: '/studio/rates?saved' }
			if (isDenied(saved)) return refused(saved)
			return { errors: { form: told[saved.why] } }
		},
	)
}
