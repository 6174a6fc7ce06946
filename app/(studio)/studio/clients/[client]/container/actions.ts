'use server'
import { viewer } from '@/app/server/sign-in/session'
import { stamp } from '@/app/server/start/clock'
import { refused, studioAction } from '@/app/server/studio/studio-action'
import { clientPage } from '@/db/clients/read-clients'
import { saveContainer as keepContainer } from '@/db/clients/save-container'
import { readSettings } from '@/db/studio/studio'
import { containerForm } from '@/lib/forms/places/card-form'
import { keptMeasures } from './card-text'

/** Measures are read in the studio's units. */
export async function saveContainer(form: FormData): Promise<void> {
	const unit = (await readSettings(await viewer()))?.lengths ?? 'in'
	const back = ({ client, place, container }: Record<string, unknown>) =>
		`/studio/clients/${String(client)}/container?${new URLSearchParams({ place: String(place), ...(container !== '' && { container: String(container) }) })}`
	await studioAction(
		form,
		{ act: 'change clients', schema: containerForm(unit), page: back },
		async (who, { once, client, place, container, ...fields }) => {
			const places = (await clientPage(who, client))?.places ?? []
			const card = places.flatMap(({ containers }) => containers).find(({ id }) => id === container)
			const saved = await keepContainer(
				who,
				{ client, place, container },
				keptMeasures(fields, card, unit),
				stamp(once),
			)
			return saved.ok ? { to: `/studio/clients/${client}` } : refused(saved)
		},
	)
}
