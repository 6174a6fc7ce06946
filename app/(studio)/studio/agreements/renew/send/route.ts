import { backToForm } from '@/app/server/attempt'
import { wakeSender } from '@/app/server/mail/sender'
import { formFields, json, refuse, seeOther, unclear } from '@/app/server/respond'
import { viewer } from '@/app/server/sign-in/session'
import { stamp } from '@/app/server/start/clock'
import { type Outcome, renewPicked } from '@/app/server/studio/renewing'
import { agreementNames } from '@/db/agreements/studio/renew'
import { keepAttempt } from '@/db/house/attempts'
import { renewAskAgain } from '@/lib/agreement/studio/form/renew-ask-text'
import { renewForm } from '@/lib/agreement/studio/form/renew-form'
import { read } from '@/lib/forms/read'

const path = '/studio/agreements/renew'

const named = (outcomes: readonly Outcome[], names: ReadonlyMap<string, string>) =>
	outcomes.map(({ agreement, says }) => ({ agreement, name: names.get(agreement) ?? 'An agreement', says }))

/** Renews what was ticked. A page with scripts sends a few at a time and asks for data; a form is led on to what came of it. */
export async function POST(request: Request): Promise<Response> {
	const who = await viewer()
	if (who.is === 'nobody') return seeOther(`/sign-in?${new URLSearchParams({ to: path })}`)
	const names = await agreementNames(who)
	if (names === undefined) return refuse(request, 'hidden', who)
	const fields = await formFields(request, ['pick'])
	if (fields === undefined) return unclear(request, 'This is not a form of ours. Nothing was changed.')
	const isAsked = request.headers.get('accept') === 'application/json'
	const filled = read(renewForm, fields)
	if (!filled.ok && isAsked) return json({ errors: filled.errors }, 422)
	const back = `${path}?${renewAskAgain(fields.ask)}`
	if (!filled.ok) return backToForm(who, back, { typed: fields, errors: filled.errors })
	const outcomes = named(await renewPicked(who, filled.value), names)
	if (outcomes.some(({ says }) => says === null)) wakeSender()
	if (isAsked) return json({ outcomes })
	const key = stamp().id<'once'>()
	const published = outcomes.filter(({ says }) => says === null).map(({ name }) => name)
	const errors = Object.fromEntries(
		outcomes.flatMap(({ agreement, name, says }) => (says === null ? [] : [[agreement, `${name}: ${says}`]])),
	)
	await keepAttempt(who, key, { typed: { published }, errors }, stamp())
	return seeOther(`${back}&done=${key}`)
}
