import { v7 } from 'uuid'
import { beforeAll, expect } from 'vitest'
import { formOf, pageWith } from '../../ask/bodies'
import { actionNamed } from '../../ask/build'
import { called, type Fields, multipart, withField } from '../../ask/forms'
import { type Answer, send } from '../../ask/send'
import { tally } from '../../ask/tally'
import { open } from '../../site/here'
import { openSession } from '../../site/people'
import { mailIsOut, record, snapshot, snapshotAtRest } from '../../site/snapshot'
import { draftOf, type Things, thingsOf } from '../../site/things'

const tried = tally((tries) => `bad input in answers: ${tries} tried`)
let session: string

beforeAll(() => {
	session = openSession(open.site.folder, open.site.cast.people.clapboardApprover.id)
})

/** A household with three palettes, extras and a container that may be left out. */
export const things = (): Things => thingsOf(open.site.folder, open.site.cast, 'clapboard')
export const draft = () => draftOf(open.site.folder, things().proposal)

export type Answering = 'approve' | 'change' | 'skip'

/** An answer as the page makes it, that would go through. */
export function formFor(answer: Answering): Fields {
	const head = [
		['once', v7()],
		['revision', things().revision],
	] as const
	if (answer === 'approve') return [...head, ['option', 'a'], ['purchaseOrder', 'PO 4471']]
	if (answer === 'skip') return [...head, ['why', 'We are away.']]
	return [...head, ['about', 'whole'], ['note', 'A little taller.'], ['about', 'option a'], ['note', '']]
}

export function give(answer: Answering, fields: Fields, how = multipart): Promise<Answer> {
	tried()
	return send(open.site.url, `/proposal/${things().proposal}/answer/${answer}`, {
		method: 'POST',
		session,
		...how(fields),
	})
}

export const look = (path: string) => send(open.site.url, path, { session })

export async function act(name: string, step?: string): Promise<void> {
	const form = formOf(name, things())
	const fields = step === undefined ? form : withField(form, 'step', step)
	await open.ask('designer', pageWith(name, things()), { method: 'POST', ...called(actionNamed(name).id, fields) })
}

/** Puts the proposal before the client once more, whatever was answered. */
export async function again(): Promise<void> {
	const state = record(open.site.folder, (db) =>
		db.prepare('SELECT state FROM proposal WHERE id = ?').pluck().get(things().proposal),
	)
	if (state === 'waiting for an answer') return
	if (state === 'approved') await act('steer', 'reopen')
	await act('publish')
	await mailIsOut(open.site.folder)
}

/** Nothing is changed by what is answered; what it is told comes back. */
export async function told(answer: Answering, fields: Fields, how = multipart): Promise<Answer> {
	const before = await snapshotAtRest(open.site.folder)
	const said = await give(answer, fields, how)
	expect(snapshot(open.site.folder)).toEqual(before)
	return said
}
