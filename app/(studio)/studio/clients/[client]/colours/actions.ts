'use server'
import { stamp } from '@/app/server/start/clock'
import { isDenied, refused, studioAction } from '@/app/server/studio/studio-action'
import { mergeSiteColours, renameSiteColour } from '@/db/clients/change-colours'
import { addSiteColours, dropSiteColour } from '@/db/clients/save-place'
import { colourForm } from '@/lib/forms/client-forms'
import { coloursForm, dropColourForm, mergeColoursForm, renameColourForm } from '@/lib/forms/pictures/photo-form'

const page = (client: unknown) => `/studio/clients/${String(client)}`

export async function addColour(form: FormData): Promise<void> {
	await studioAction(
		form,
		{ act: 'change clients', schema: colourForm, page: ({ client }) => page(client) },
		async (who, { once, client, place, ...colour }) => {
			const added = await addSiteColours(who, { client, place }, [colour], stamp(once))
			return added.ok ? { to: page(client) } : refused(added)
		},
	)
}

export async function addColours(form: FormData): Promise<void> {
	await studioAction(
		form,
		{
			act: 'change clients',
			schema: coloursForm,
			lists: ['name', 'hex', 'side', 'spotX', 'spotY'],
			page: ({ client }) => page(client),
		},
		async (who, { once, client, place, colours }) => {
			const added = await addSiteColours(who, { client, place }, colours, stamp(once))
			return added.ok ? { to: page(client) } : refused(added)
		},
	)
}

export async function dropColour(form: FormData): Promise<void> {
	await studioAction(
		form,
		{ act: 'change clients', schema: dropColourForm, page: ({ client }) => page(client) },
		async (who, { once, client, colour }) => {
			const dropped = await dropSiteColour(who, { client, colour }, stamp(once))
			return dropped.ok ? { to: page(client) } : refused(dropped)
		},
	)
}

export async function renameColour(form: FormData): Promise<void> {
	await studioAction(
		form,
		{ act: 'change clients', schema: renameColourForm, page: ({ client }) => page(client) },
		async (who, { once, ...of }) => {
			const renamed = await renameSiteColour(who, of, stamp(once))
			return renamed.ok ? { to: page(of.client) } : refused(renamed)
		},
	)
}

export async function mergeColours(form: FormData): Promise<void> {
	await studioAction(
		form,
		{ act: 'change clients', schema: mergeColoursForm, page: ({ client }) => page(client) },
		async (who, { once, ...of }) => {
			const merged = await mergeSiteColours(who, of, stamp(once))
			if (merged.ok) return { to: page(of.client) }
			if (isDenied(merged)) return refused(merged)
			return { errors: { other: 'Choose two colours of one place.' } }
		},
	)
}
