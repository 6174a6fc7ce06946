'use server'
import { stamp } from '@/app/server/start/clock'
import { isDenied, refused, studioAction } from '@/app/server/studio/studio-action'
import { startDraft } from '@/db/proposals/desk/start'
import { startForm } from '@/lib/forms/catalogue/start-forms'

const pageOf = (season: unknown, client: unknown) =>
	`/studio/season/${String(season)}/start?${new URLSearchParams({ client: String(client) })}`

const says = {
	'left alone': 'The draft has palettes already, and what is there is never written over.',
	'no containers': 'There is no container to fill yet: add one to the client first.',
} as const

/** Starts a client's draft from the collection, an earlier season, another client or a recipe. */
export async function startFrom(form: FormData): Promise<void> {
	await studioAction(
		form,
		{ act: 'change the draft', schema: startForm, page: ({ season, client }) => pageOf(season, client) },
		async (who, { once, ...starting }) => {
			const started = await startDraft(who, starting, stamp(once))
			if (isDenied(started)) return refused(started)
			if (started.ok)
				return { to: `/studio/proposal/${started.proposal}?told=${started.told.length > 0 ? 'changed' : 'started'}` }
			if (started.why === 'not ready')
				return {
					errors: { form: `The collection is not ready: ${started.problems.map((each) => each.says).join(' ')}` },
				}
			return { errors: { form: says[started.why] } }
		},
	)
}
