'use server'
import { stamp } from '@/app/server/start/clock'
import { isDenied, refused, studioAction } from '@/app/server/studio/studio-action'
import { applyCollection, type Outcome } from '@/db/studio/collection/apply'
import { applyForm } from '@/lib/forms/catalogue/start-forms'

const pageOf = (season: unknown) => `/studio/season/${String(season)}/apply`

const countOf = (all: readonly Outcome[], is: Outcome['is']) =>
	String(all.filter((outcome) => outcome.is === is).length)

/** Drafts from the collection for every client that is ticked. */
export async function applyToClients(form: FormData): Promise<void> {
	await studioAction(
		form,
		{
			act: 'change the draft',
			schema: applyForm,
			lists: ['client'],
			page: ({ season }) => pageOf(season),
		},
		async (who, { once, client: clients, ...applying }) => {
			const done = await applyCollection(who, { ...applying, clients }, stamp(once))
			if (isDenied(done)) return refused(done)
			if (!done.ok)
				return { errors: { form: `Nothing was drafted. ${done.problems.map(({ says }) => says).join(' ')}` } }
			const query = new URLSearchParams({
				drafted: countOf(done.clients, 'drafted'),
				alone: countOf(done.clients, 'left alone'),
				bare: countOf(done.clients, 'no containers'),
			})
			return { to: `${pageOf(applying.season)}?${query}` }
		},
	)
}
