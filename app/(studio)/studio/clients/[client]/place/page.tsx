import type { Metadata } from 'next'
import { v7 } from 'uuid'
import { attemptFor } from '@/app/server/attempt'
import { first, idIn } from '@/app/server/pages'
import { hide } from '@/app/server/refusal'
import { studioPage } from '@/app/server/studio/studio-page'
import { ErrorSummary } from '@/app/ui/error-summary'
import { ChoiceField, TextField, WordsField } from '@/app/ui/field'
import { one } from '@/app/ui/studio/settings-fields'
import { StudioFrame } from '@/app/ui/studio/studio-frame'
import { type ClientPage, clientPage } from '@/db/clients/read-clients'
import { wallKinds } from '@/lib/container/site'
import { zoneText } from '@/lib/forms/places/zone-field'
import type { Typed } from '@/lib/forms/read'
import { savePlace } from '../../actions'

export const metadata: Metadata = { title: 'Place' }

function savedFields(place: ClientPage['places'][number] | undefined): Typed {
	if (place === undefined) return { taxPercent: '0', driveMinutes: '0', wallKind: 'clapboard', wallHex: '#8a94a0' }
	const {
		id,
		name,
		address,
		taxMilliPercent,
		driveMinutes,
		zoneCents,
		wallKind,
		wallHex,
		doorHex,
		hardinessZone,
		accessNote,
	} = place
	const zone = zoneCents === null ? '' : (zoneCents / 100).toFixed(2)
	return {
		place: id,
		name,
		address,
		taxPercent: String(taxMilliPercent / 1000),
		driveMinutes: String(driveMinutes),
		zone,
		wallKind,
		wallHex,
		doorHex: doorHex ?? '',
		hardinessZone: zoneText(hardinessZone),
		accessNote,
	}
}

const labels = {
	name: 'Name',
	address: 'Address',
	taxPercent: 'Sales tax here, per cent',
	driveMinutes: 'Minutes from your base',
	zone: 'Flat price for the way (instead of minutes)',
	wallKind: 'Wall',
	wallHex: 'Its colour',
	doorHex: 'Colour of the door, such as #7a3a2e (optional)',
	hardinessZone: 'Hardiness zone, such as 5b (optional)',
	accessNote: 'Access',
}

export default async function PlaceCard({ params, searchParams }: PageProps<'/studio/clients/[client]/place'>) {
	const { client: text } = await params
	const { who, frame } = await studioPage(`/studio/clients/${text}/place`, 'change clients')
	const page = await clientPage(who, idIn<'client'>(text))
	const { place: wanted, form } = await searchParams
	const place = page?.places.find(({ id }) => id === first(wanted))
	if (page === undefined || (wanted !== undefined && place === undefined)) hide(who)
	const { typed: tried, errors } = await attemptFor(who, form)
	const typed = { ...savedFields(place), ...tried }
	const text_ = (name: keyof typeof labels, more = {}) => (
		<TextField name={name} label={labels[name]} value={one(typed, name)} error={errors[name]} {...more} />
	)
	return (
		<StudioFrame {...frame} here="Clients">
			<p className="text-soft">
				<a href={`/studio/clients/${page.client.id}`}>{page.client.name}</a>
			</p>
			<h1 className="text-4xl font-extrabold tracking-tight">{place?.name ?? 'Add a place'}</h1>
			<form key={String(form)} action={savePlace} className="max-w-xl" noValidate>
				<ErrorSummary errors={errors} labels={labels} />
				<input type="hidden" name="once" value={v7()} />
				<input type="hidden" name="client" value={page.client.id} />
				<input type="hidden" name="place" value={place?.id ?? ''} />
				{text_('name', { hint: 'As in “front door”.' })}
				<WordsField name="address" label={labels.address} value={one(typed, 'address')} error={errors.address} />
				{text_('taxPercent', {
					inputMode: 'decimal',
					hint: 'Ask your accountant what is taxed.',
				})}
				{text_('driveMinutes', { inputMode: 'decimal' })}
				{text_('zone', { inputMode: 'decimal' })}
				<ChoiceField
					name="wallKind"
					label={labels.wallKind}
					value={one(typed, 'wallKind')}
					choices={wallKinds.map((value) => ({ value, label: value }))}
					error={errors.wallKind}
				/>
				{text_('wallHex', { type: 'color' })}
				{text_('doorHex')}
				{text_('hardinessZone', { hint: 'From the published zone map: it says what overwinters here.' })}
				<WordsField
					name="accessNote"
					label={labels.accessNote}
					hint="For whoever comes to install: gate, key, hose, outlet."
					value={one(typed, 'accessNote')}
					error={errors.accessNote}
				/>
				<button type="submit" className="act first mt-8">
					Save the place
				</button>
			</form>
		</StudioFrame>
	)
}
