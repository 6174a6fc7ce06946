'use server'
import { stamp } from '@/app/server/start/clock'
import { isDenied, refused, studioAction } from '@/app/server/studio/studio-action'
import { saveClient as keepClient } from '@/db/clients/save-client'
import { endContact as closeDoor, inviteContact } from '@/db/clients/save-contact'
import { savePlace as keepPlace } from '@/db/clients/save-place'
import { changeAddress as putAddress } from '@/db/sign-in/change-address'
import { takenWords } from '@/lib/access/taken-words'
import { changeAddressForm, clientForm, contactForm, endContactForm, placeForm } from '@/lib/forms/client-forms'

const page = (client: unknown) => `/studio/clients/${String(client)}`

export async function saveClient(form: FormData): Promise<void> {
	const back = ({ client }: Record<string, unknown>) => (client === '' ? '/studio/clients/new' : `${page(client)}/edit`)
	await studioAction(
		form,
		{ act: 'change clients', schema: clientForm, page: back },
		async (who, { once, client, ...fields }) => {
			const saved = await keepClient(who, client, fields, stamp(once))
			return saved.ok ? { to: page(saved.id) } : refused(saved)
		},
	)
}

export async function invite(form: FormData): Promise<void> {
	await studioAction(
		form,
		{ act: 'change clients', schema: contactForm, page: ({ client }) => page(client) },
		async (who, { once, ...contact }) => {
			const invited = await inviteContact(who, contact, stamp(once))
			if (invited.ok) return { to: `${page(contact.client)}?${new URLSearchParams({ invited: invited.contact })}` }
			return isDenied(invited) ? refused(invited) : { errors: { address: takenWords(invited) } }
		},
	)
}

export async function endContact(form: FormData): Promise<void> {
	await studioAction(
		form,
		{ act: 'change clients', schema: endContactForm, page: ({ client }) => page(client) },
		async (who, { once, client, contact }) => {
			const ended = await closeDoor(who, { client, contact }, stamp(once))
			return ended.ok ? { to: `${page(client)}?${new URLSearchParams({ closed: contact })}` } : refused(ended)
		},
	)
}

export async function changeAddress(form: FormData): Promise<void> {
	await studioAction(
		form,
		{ act: 'change clients', schema: changeAddressForm, page: ({ client }) => page(client) },
		async (who, { once, ...change }) => {
			const changed = await putAddress(who, change, stamp(once))
			if (changed.ok) return { to: `${page(change.client)}?${new URLSearchParams({ moved: change.contact })}` }
			return isDenied(changed) ? refused(changed) : { errors: { address: takenWords(changed) } }
		},
	)
}

export async function savePlace(form: FormData): Promise<void> {
	const back = ({ client, place }: Record<string, unknown>) =>
		`${page(client)}/place?${new URLSearchParams(place === '' ? {} : { place: String(place) })}`
	await studioAction(
		form,
		{ act: 'change clients', schema: placeForm, page: back },
		async (who, { once, client, place, taxPercent, zone, ...fields }) => {
			const saved = await keepPlace(
				who,
				{ client, place },
				{ ...fields, taxMilliPercent: taxPercent, zoneCents: zone },
				stamp(once),
			)
			return saved.ok ? { to: page(client) } : refused(saved)
		},
	)
}
