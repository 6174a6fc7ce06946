import type { Metadata } from 'next'
import { v7 } from 'uuid'
import { attemptFor } from '@/app/server/attempt'
import { first, idIn } from '@/app/server/pages'
import { hide } from '@/app/server/refusal'
import { studioPage } from '@/app/server/studio/studio-page'
import { ErrorSummary } from '@/app/ui/error-summary'
import { StudioFrame } from '@/app/ui/studio/studio-frame'
import { clientPage } from '@/db/clients/read-clients'
import { readSettings } from '@/db/studio/studio'
import { saveContainer } from './actions'
import { CardFields, cardLabels } from './card-fields'
import { cardText } from './card-text'

export const metadata: Metadata = { title: 'Container' }

export default async function ContainerCard({ params, searchParams }: PageProps<'/studio/clients/[client]/container'>) {
	const { client: text } = await params
	const { who, frame } = await studioPage(`/studio/clients/${text}/container`, 'change clients')
	const page = await clientPage(who, idIn<'client'>(text))
	const { place: where, container: which, form } = await searchParams
	const place = page?.places.find(({ id }) => id === first(where))
	const container = place?.containers.find(({ id }) => id === first(which))
	if (page === undefined || place === undefined || (which !== undefined && container === undefined)) hide(who)
	const unit = (await readSettings(who))?.lengths ?? 'in'
	const { typed, errors } = await attemptFor(who, form)
	return (
		<StudioFrame {...frame} here="Clients">
			<p className="text-soft">
				<a href={`/studio/clients/${page.client.id}`}>{page.client.name}</a>, {place.name}
			</p>
			<h1 className="text-4xl font-extrabold tracking-tight">{container?.name ?? 'Add a container'}</h1>
			<form key={String(form)} action={saveContainer} className="max-w-6xl" noValidate>
				<ErrorSummary errors={errors} labels={cardLabels(unit)} />
				<input type="hidden" name="once" value={v7()} />
				<input type="hidden" name="client" value={page.client.id} />
				<input type="hidden" name="place" value={place.id} />
				<input type="hidden" name="container" value={container?.id ?? ''} />
				<CardFields typed={{ ...cardText(container, unit), ...typed }} errors={errors} unit={unit} />
				<button type="submit" className="act first mt-8">
					Save the card
				</button>
			</form>
		</StudioFrame>
	)
}
