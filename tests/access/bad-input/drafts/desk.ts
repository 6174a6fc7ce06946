import { beforeAll } from 'vitest'
import { json } from '../../ask/forms'
import type { Answer } from '../../ask/send'
import { tally } from '../../ask/tally'
import { aliveIn } from '../../look/hostile'
import { open } from '../../site/here'
import { record } from '../../site/snapshot'
import { draftOf, type Things, thingsOf } from '../../site/things'

const tried = tally((tries) => `bad input in drafts: ${tries} tried`)
export let things: Things
export let draft: ReturnType<typeof draftOf>

beforeAll(() => {
	things = thingsOf(open.site.folder, open.site.cast, 'clapboard')
	const kept = draftOf(open.site.folder, things.proposal)
	draft = { ...kept, agreement: { is: 'fixed', cents: '640.00', containers: [things.container] } }
})

export const version = () =>
	record(open.site.folder, (db) =>
		Number(db.prepare('SELECT version FROM draft WHERE proposal_id = ?').pluck().get(things.proposal)),
	)

export const post = (where: 'save' | 'price', body: unknown): Promise<Answer> => {
	tried()
	return open.ask('designer', `/studio/proposal/${things.proposal}/${where}`, { method: 'POST', ...json(body) })
}
export const save = (next: unknown) => post('save', { version: version(), draft: next })

/** Refused by both, by name, with nothing kept. */
export async function refuses(next: unknown, at?: string): Promise<string[]> {
	const wrong: string[] = []
	for (const answer of [await save(next), await post('price', { draft: next })]) {
		if (answer.status !== 422) wrong.push(`answered ${answer.status}: ${answer.body.slice(0, 80)}`)
		else if (at !== undefined && !answer.body.includes(`"${at}`))
			wrong.push(`does not name ${at}: ${answer.body.slice(0, 120)}`)
		if (aliveIn(answer.body).length > 0 && !String(answer.headers['content-type']).startsWith('application/json'))
			wrong.push('alive')
	}
	return wrong
}
