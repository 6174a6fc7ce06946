'use server'
import { stamp } from '@/app/server/start/clock'
import { isDenied, refused, studioAction } from '@/app/server/studio/studio-action'
import { saveSettings as keepSettings } from '@/db/studio/studio'
import { onceField } from '@/lib/forms/fields'
import { settingsForm } from '@/lib/forms/studio-forms'

export async function saveSettings(form: FormData): Promise<void> {
	const schema = settingsForm.extend({ once: onceField })
	await studioAction(
		form,
		{ act: 'change settings', schema, page: () => '/studio/settings' },
		async (who, { once, ...settings }) => {
			const saved = await keepSettings(who, settings, stamp(once))
			if (saved.ok) return { to: '/studio/settings?saved' }
			if (isDenied(saved)) return refused(saved)
			return { errors: { currency: 'Prices have been published in the currency that you have: it stays.' } }
		},
	)
}
