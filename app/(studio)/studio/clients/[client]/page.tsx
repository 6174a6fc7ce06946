import type { Metadata } from 'next'
import { attemptFor } from '@/app/server/attempt'
import { first, idIn } from '@/app/server/pages'
import { hide } from '@/app/server/refusal'
import { stamp } from '@/app/server/start/clock'
import { studioPage } from '@/app/server/studio/studio-page'
import { StudioFrame } from '@/app/ui/studio/studio-frame'
import { clientAgreements } from '@/db/agreements/studio/of-client'
import { type ClientPage, clientPage } from '@/db/clients/read-clients'
import { visitsAt } from '@/db/clients/visits/read-visits'
import type { Attempt } from '@/lib/forms/read'
import { Agreements } from './agreements'
import { Contacts } from './contacts'
import { Place } from './place-part'
import { Proposals } from './proposals'
import { Visits } from './visits'

const none: Attempt = { typed: {}, errors: {} }

/** What went wrong was a form of the place, or of one of its colours. */
const isOf = ({ id, colours }: ClientPage['places'][number], { typed }: Attempt): boolean =>
	typed.place === id || colours.some((colour) => colour.id === typed.colour)

type Somebody = { readonly name: string; readonly address: string } | undefined
type Done = { readonly closed: Somebody; readonly moved: Somebody; readonly invited: Somebody }

/** What was done just now to a contact, in a sentence. */
function toldOf({ closed, moved, invited }: Done): string | undefined {
	if (closed) return `${closed.name} can no longer come in.`
	if (moved) return `${moved.name} is known by ${moved.address} now. The old address is told.`
	return invited && `${invited.name}, ${invited.address}, may come in.`
}

export const metadata: Metadata = { title: 'Client' }

export default async function Client({ params, searchParams }: PageProps<'/studio/clients/[client]'>) {
	const { client: text } = await params
	const { who, frame } = await studioPage(`/studio/clients/${text}`, 'see clients')
	const page = await clientPage(who, idIn<'client'>(text))
	if (page === undefined) hide(who)
	const { client, timeZone, contacts, gone, places, proposals } = page
	const { form, closed, moved, invited } = await searchParams
	const named = (people: ClientPage['contacts'], id: typeof closed) => people.find((each) => each.id === first(id))
	const attempt = await attemptFor(who, form)
	return (
		<StudioFrame {...frame} here="Clients">
			<div className="flex flex-wrap items-baseline justify-between gap-4">
				<h1 className="text-4xl font-extrabold tracking-tight">{client.name}</h1>
				<a href={`/studio/clients/${client.id}/edit`}>Change name, terms and note</a>
			</div>
			<p>
				<a href={`/studio/clients/${client.id}/kerb`} className="inline-flex min-h-11 items-center">
					At the kerb
				</a>
			</p>
			<p className="mt-1 text-soft">
				{client.kind}
				{client.kind === 'business' && `, pays within ${client.netDays} days`}
				{client.exemptCertificate && `, tax-exempt by certificate ${client.exemptCertificate}`}
			</p>
			{client.studioNote !== '' && <p className="said mt-4 max-w-2xl whitespace-pre-line">{client.studioNote}</p>}
			<div className="mt-8 grid gap-x-12 gap-y-10 lg:grid-cols-[2fr_1fr]">
				<div>
					<h2 className="text-xl">Places and containers</h2>
					{places.map((place) => (
						<Place key={place.id} client={client.id} place={place} attempt={isOf(place, attempt) ? attempt : none} />
					))}
					<p className="mt-4">
						<a className="act" href={`/studio/clients/${client.id}/place`}>
							Add a place
						</a>
					</p>
				</div>
				<div>
					<Contacts
						client={client.id}
						contacts={contacts}
						told={toldOf({
							closed: named(gone, closed),
							moved: named(contacts, moved),
							invited: named(contacts, invited),
						})}
						attempt={places.some((place) => isOf(place, attempt)) ? none : attempt}
					/>
					<Agreements client={client.id} agreements={await clientAgreements(who, client.id, stamp())} />
					<Proposals proposals={proposals} timeZone={timeZone} />
					<Visits client={client.id} visits={await visitsAt(who, client.id)} />
				</div>
			</div>
		</StudioFrame>
	)
}
