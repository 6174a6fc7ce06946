'use server'
import { wakeSender } from '@/app/server/mail/sender'
import { stamp } from '@/app/server/start/clock'
import { isDenied, refused, studioAction } from '@/app/server/studio/studio-action'
import { publish as publishProposal } from '@/db/proposals/publish'
import { steer as steerProposal } from '@/db/proposals/steer'
import { publishForm, steerForm } from '@/lib/forms/season-forms'
import { refusalInWords } from '@/lib/proposal/offer/told'

const desk = (proposal: unknown, told?: string) =>
	`/studio/proposal/${String(proposal)}${told === undefined ? '' : `?${new URLSearchParams({ told })}`}`

/** Freezes the saved draft as the next revision. */
export async function publish(form: FormData): Promise<void> {
	await studioAction(
		form,
		{ act: 'publish', schema: publishForm, page: ({ proposal }) => desk(proposal) },
		async (who, publishing) => {
			const published = await publishProposal(who, publishing, stamp())
			if (isDenied(published)) return refused(published)
			if (published.ok) wakeSender()
			return { to: desk(publishing.proposal, published.ok ? 'published' : published.why) }
		},
	)
}

export async function steer(form: FormData): Promise<void> {
	await studioAction(
		form,
		{ act: 'steer the proposal', schema: steerForm, page: ({ proposal }) => desk(proposal) },
		async (who, steering) => {
			const steered = await steerProposal(who, steering, stamp())
			if (isDenied(steered)) return refused(steered)
			if (steered.ok) wakeSender()
			else if (steered.why === 'more than was approved') return { errors: { remains: refusalInWords(steered.why) } }
			return { to: desk(steering.proposal, steered.ok ? 'steered' : steered.why) }
		},
	)
}
