import type { Metadata } from 'next'
import { hide } from '@/app/server/refusal'
import { stamp } from '@/app/server/start/clock'
import { studioPage } from '@/app/server/studio/studio-page'
import { StudioFrame } from '@/app/ui/studio/studio-frame'
import { readVisits } from '@/db/clients/visits/read-visits'
import { bookSentence } from '@/lib/visit/book-sentence'
import { Made, Planned, ToPlan } from './book'

export const metadata: Metadata = { title: 'Visits' }

/** Those to plan first, then the planned by day, then what was made lately. */
export default async function Visits() {
	const { who, frame } = await studioPage('/studio/visits', 'see visits')
	const book = await readVisits(who, stamp())
	if (book === undefined) hide(who)
	const { today, toPlan, planned, made } = book
	const late = planned.filter(({ day }) => day !== null && day < today).length
	return (
		<StudioFrame {...frame} here="Visits" isHelper={who.is === 'staff' && who.role === 'helper'}>
			<h1 className="text-4xl font-extrabold tracking-tight">Visits</h1>
			<p className="mt-2 text-lg">{bookSentence({ toPlan: toPlan.length, planned: planned.length, late })}</p>
			<ToPlan visits={toPlan} />
			<Planned visits={planned} today={today} />
			<Made visits={made} />
		</StudioFrame>
	)
}
