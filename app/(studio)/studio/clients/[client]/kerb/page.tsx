import type { Metadata } from 'next'
import { v7 } from 'uuid'
import { attemptFor } from '@/app/server/attempt'
import { first, idIn } from '@/app/server/pages'
import { hide } from '@/app/server/refusal'
import { studioPage } from '@/app/server/studio/studio-page'
import { one } from '@/app/ui/studio/settings-fields'
import { StudioFrame } from '@/app/ui/studio/studio-frame'
import { type ClientPage, clientPage } from '@/db/clients/read-clients'
import { readSettings } from '@/db/studio/studio'
import { wallUnseen } from '@/lib/forms/places/kerb-form'
import { Kerb } from './kerb'

export const metadata: Metadata = { title: 'At the kerb' }

/** Tax and the way as at the place that they have already: most are in the same town. */
const blankFor = ([there]: ClientPage['places'], place: string) => ({
	place,
	'new.wallHex': wallUnseen,
	'new.taxPercent': String((there?.taxMilliPercent ?? 0) / 1000),
	'new.driveMinutes': String(there?.driveMinutes ?? 0),
})

const told: Readonly<Record<string, string>> = {
	sent: 'Sent. What stands there too can be added now.',
	before: 'This had been sent before. Nothing was changed a second time.',
}

export default async function AtKerb({ params, searchParams }: PageProps<'/studio/clients/[client]/kerb'>) {
	const { client: text } = await params
	const { who, frame } = await studioPage(`/studio/clients/${text}/kerb`, 'change clients')
	const page = await clientPage(who, idIn<'client'>(text))
	if (page === undefined || who.is !== 'staff') hide(who)
	const { form, place: wanted, told: what } = await searchParams
	const { typed, errors } = await attemptFor(who, form)
	const { client, places } = page
	const blank = blankFor(places, places.find(({ id }) => id === first(wanted))?.id ?? '')
	const tried = Object.fromEntries(Object.keys(typed).map((name) => [name, one(typed, name)]))
	return (
		<StudioFrame {...frame} here="Clients">
			<div className="mx-auto max-w-lg">
				<p className="text-soft">
					<a href={`/studio/clients/${client.id}`} className="inline-flex min-h-11 items-center">
						{client.name}
					</a>
				</p>
				<h1 className="text-4xl font-extrabold tracking-tight">At the kerb</h1>
				{told[first(what) ?? ''] && (
					<p role="status" className="said mt-4">
						{told[first(what) ?? '']}
					</p>
				)}
				<Kerb
					key={String(form)}
					of={{ person: who.person, client: client.id, clientName: client.name }}
					places={places.map(({ id, name }) => ({ id, name }))}
					unit={(await readSettings(who))?.lengths ?? 'in'}
					first={{ id: v7(), fields: form === undefined ? blank : { ...blank, ...tried }, errors }}
					blank={blank}
				/>
			</div>
		</StudioFrame>
	)
}
