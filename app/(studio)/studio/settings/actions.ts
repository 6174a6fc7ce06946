'use server'
import { stamp } from '@/app/server/start/clock'
import { isDenied, refused, studioAction } from '@/app/server/studio/studio-action'
import { savePayWords as keepPayWords } from '@/db/money/pay-words'
import { hireStaff } from '@/db/studio/hire'
import { endStaff as closeDoor } from '@/db/studio/staff'
import { saveSettings as keepSettings } from '@/db/studio/studio'
import { onceField } from '@/lib/forms/fields'
import { payWordsForm } from '@/lib/forms/rates/money-forms'
import { endStaffForm, hireForm, settingsForm } from '@/lib/forms/studio-forms'

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

export async function hire(form: FormData): Promise<void> {
	await studioAction(
		form,
		{ act: 'change settings', schema: hireForm, page: () => '/studio/settings' },
		async (who, { once, helper: name, address }) => {
			const hired = await hireStaff(who, { name, address, role: 'helper' }, stamp(once))
			if (hired.ok) return { to: '/studio/settings' }
			if (isDenied(hired)) return refused(hired)
			const isHere = hired.why === 'works here already'
			return { errors: { address: `This address belongs to ${isHere ? 'somebody here' : 'a client’s contact'}.` } }
		},
	)
}

export async function endStaff(form: FormData): Promise<void> {
	await studioAction(
		form,
		{ act: 'change settings', schema: endStaffForm, page: () => '/studio/settings' },
		async (who, { once, member }) => {
			const ended = await closeDoor(who, member, stamp(once))
			if (ended.ok) return { to: '/studio/settings' }
			if (isDenied(ended)) return refused(ended)
			return { errors: { form: 'That is you: somebody else has to close the door behind you.' } }
		},
	)
}

/** How the studio is paid, as invoices say it. */
export async function savePayWords(form: FormData): Promise<void> {
	await studioAction(
		form,
		{ act: 'change settings', schema: payWordsForm, page: () => '/studio/settings' },
		async (who, { once, payWords }) => {
			const saved = await keepPayWords(who, payWords, stamp(once))
			return saved.ok ? { to: '/studio/settings?saved' } : refused(saved)
		},
	)
}
