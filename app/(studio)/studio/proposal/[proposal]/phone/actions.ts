'use server'
import { wakeSender } from '@/app/server/mail/sender'
import { stamp } from '@/app/server/start/clock'
import { isDenied, refused, studioAction, type Went } from '@/app/server/studio/studio-action'
import { approve } from '@/db/proposals/answers/approve'
import { askForChange } from '@/db/proposals/answers/ask-for-change'
import type { Answered } from '@/db/proposals/answers/open'
import { skipSeason } from '@/db/proposals/answers/skip'
import { phoneApproveForm, phoneChangeForm, phoneSkipForm } from '@/lib/forms/answer/answer-form'
import { choiceQuery, type Typed } from '@/lib/forms/read'

const act = 'answer by phone'
/** It was heard, not clicked: there is no browser of the client's to name. */
const browser = ''

const page = (fields: Typed) => `/studio/proposal/${String(fields.proposal)}/phone?${choiceQuery(fields)}`

async function told(proposal: string, answered: Answered): Promise<Went> {
	if (isDenied(answered)) return refused(answered)
	if (answered.ok) wakeSender()
	const why = answered.ok ? 'taken down' : answered.why
	return { to: `/studio/proposal/${proposal}?${new URLSearchParams({ told: why })}` }
}

export async function takeApproval(form: FormData): Promise<void> {
	const spec = { act, schema: phoneApproveForm, lists: ['place', 'extra', 'without'], page } as const
	await studioAction(form, spec, async (who, { place: places, extra: extras, without: leftOut, ...rest }) =>
		told(rest.proposal, await approve(who, { ...rest, places, extras, leftOut, browser }, stamp())),
	)
}

export async function takeChange(form: FormData): Promise<void> {
	const spec = { act, schema: phoneChangeForm, lists: ['about', 'note'], page } as const
	await studioAction(form, spec, async (who, asked) =>
		told(asked.proposal, await askForChange(who, { ...asked, browser }, stamp())),
	)
}

export async function takeSkip(form: FormData): Promise<void> {
	await studioAction(form, { act, schema: phoneSkipForm, page }, async (who, skipped) =>
		told(skipped.proposal, await skipSeason(who, { ...skipped, browser }, stamp())),
	)
}
