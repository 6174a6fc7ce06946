import { v7 } from 'uuid'
import { ErrorSummary } from '@/app/ui/error-summary'
import { one } from '@/app/ui/studio/settings-fields'
import type { ClientPage } from '@/db/clients/read-clients'
import type { Attempt } from '@/lib/forms/read'
import { addColour } from './colours/actions'
import { PhotoColours } from './colours/photo-colours'
import { SiteColours } from './colours/site-colours'

type Site = ClientPage['places'][number]
type Props = { readonly client: string; readonly place: Site; readonly attempt: Attempt }

const none: Attempt = { typed: {}, errors: {} }

const Chip = ({ hex }: { readonly hex: string }) => (
	<svg width="18" height="18" aria-hidden="true" className="me-1.5 inline">
		<rect width="18" height="18" fill={hex} />
	</svg>
)

/** One place: its wall, its colours and what stands there. */
export function Place({ client, place, attempt }: Props) {
	const { id, name, address, wallKind, wallHex, colours, containers, accessNote } = place
	const base = `/studio/clients/${client}`
	return (
		<section className="mt-5 border-t-2 border-ink pt-2" aria-label={name}>
			<p className="flex flex-wrap items-baseline justify-between gap-x-4">
				<b className="text-lg">{name}</b>
				<a href={`${base}/place?place=${id}`}>
					Change<span className="sr-only"> {name}</span>
				</a>
			</p>
			<p className="whitespace-pre-line text-soft">{address}</p>
			{accessNote !== '' && <p className="whitespace-pre-line">{accessNote}</p>}
			<div className="mt-2 mb-1.5 flex flex-wrap gap-x-5 gap-y-1">
				<span>
					<Chip hex={wallHex} />
					wall, {wallKind}
				</span>
			</div>
			<SiteColours client={client} colours={colours} attempt={'colour' in attempt.typed ? attempt : none} />
			<PhotoColours key={colours.length} client={client} place={id} once={v7()} />
			<AddColour client={client} place={id} attempt={'colour' in attempt.typed ? none : attempt} />
			<Containers base={base} place={id} containers={containers} />
			<a className="does inline-block" href={`${base}/container?place=${id}`}>
				Add a container<span className="sr-only"> to {name}</span>
			</a>
		</section>
	)
}

function AddColour({ client, place, attempt: { typed, errors } }: Omit<Props, 'place'> & { readonly place: string }) {
	return (
		<details open={Object.keys(errors).length > 0}>
			<summary className="does inline-block">Add a colour by eye</summary>
			<ErrorSummary errors={errors} />
			<form action={addColour} key={JSON.stringify(typed)} className="flex flex-wrap items-end gap-3">
				<input type="hidden" name="once" value={v7()} />
				<input type="hidden" name="client" value={client} />
				<input type="hidden" name="place" value={place} />
				<label>
					<span className="block text-sm font-semibold">Colour</span>
					<input type="color" name="hex" defaultValue={one(typed, 'hex') || '#7a8b6f'} className="box w-16 p-1" />
				</label>
				<label className="grow">
					<span className="block text-sm font-semibold">Its name</span>
					<input name="name" className="box" autoComplete="off" defaultValue={one(typed, 'name')} />
				</label>
				<label>
					<span className="block text-sm font-semibold">Seen</span>
					<select name="side" className="box" defaultValue={one(typed, 'side') || 'outside'}>
						<option>outside</option>
						<option>inside</option>
					</select>
				</label>
				<button type="submit" className="act">
					Add
				</button>
			</form>
		</details>
	)
}

type ContainersProps = { readonly base: string; readonly place: string; readonly containers: Site['containers'] }

function Containers({ base, place, containers }: ContainersProps) {
	return (
		<ul className="mt-2">
			{containers.map(({ id: container, name: called, shape, stands }) => (
				<li
					key={container}
					className="flex flex-wrap items-baseline justify-between gap-x-4 border-t border-line py-1.5"
				>
					<span>
						{called}{' '}
						<span className="text-soft">
							{shape}, stands {stands}
						</span>
					</span>
					<a href={`${base}/container?place=${place}&container=${container}`}>
						Card<span className="sr-only"> of {called}</span>
					</a>
				</li>
			))}
		</ul>
	)
}
