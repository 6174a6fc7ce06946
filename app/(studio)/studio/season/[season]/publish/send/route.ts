import { backToForm } from '@/app/server/attempt'
import { wakeSender } from '@/app/server/mail/sender'
import { formFields, json, refuse, seeOther, unclear } from '@/app/server/respond'
import { viewer } from '@/app/server/sign-in/session'
import { stamp } from '@/app/server/start/clock'
import { type Outcome, publishPicked } from '@/app/server/studio/publishing'
import { keepAttempt } from '@/db/house/attempts'
import { seasonNames } from '@/db/studio/ready-drafts'
import { read } from '@/lib/forms/read'
import { publishPickedForm } from '@/lib/forms/season-forms'
import { id, isId, type ProposalId } from '@/lib/units/id'

type Names = ReadonlyMap<ProposalId, string>

const named = (outcomes: readonly Outcome[], names: Names) =>
	outcomes.map(({ proposal, says }) => ({ proposal, name: names.get(proposal) ?? 'A proposal', says }))

/** Publishes what was ticked. A page with scripts sends a few at a time and asks for data; a form is led on to what came of it. */
export async function POST(
	request: Request,
	{ params }: RouteContext<'/studio/season/[season]/publish/send'>,
): Promise<Response> {
	const who = await viewer()
	const { season: text } = await params
	const path = `/studio/season/${text}/publish`
	if (who.is === 'nobody') return seeOther(`/sign-in?${new URLSearchParams({ to: path })}`)
	const season = isId(text) ? id<'season'>(text) : undefined
	const names = season && (await seasonNames(who, season))
	if (season === undefined || names === undefined) return refuse(request, 'hidden', who)
	const fields = await formFields(request, ['pick'])
	if (fields === undefined) return unclear(request, 'This is not a form of ours. Nothing was changed.')
	const isAsked = request.headers.get('accept') === 'application/json'
	const filled = read(publishPickedForm, fields)
	if (!filled.ok && isAsked) return json({ errors: filled.errors }, 422)
	if (!filled.ok) return backToForm(who, path, { typed: fields, errors: filled.errors })
	const outcomes = named(await publishPicked(who, { season, ...filled.value }), names)
	if (outcomes.some(({ says }) => says === null)) wakeSender()
	if (isAsked) return json({ outcomes })
	const key = stamp().id<'once'>()
	const published = outcomes.filter(({ says }) => says === null).map(({ name }) => name)
	const errors = Object.fromEntries(
		outcomes.flatMap(({ proposal, name, says }) => (says === null ? [] : [[proposal, `${name}: ${says}`]])),
	)
	await keepAttempt(who, key, { typed: { published }, errors }, stamp())
	return seeOther(`${path}?done=${key}`)
}
