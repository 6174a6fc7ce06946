import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { z } from 'zod'
import { formOf, photo } from '../ask/bodies'
import { actionNamed } from '../ask/build'
import { called, urlencoded } from '../ask/forms'
import { freshSender, send } from '../ask/send'
import { open } from '../site/here'
import type { PersonName } from '../site/people'
import { things } from './bakery'

const line = z.looseObject({ act: z.string(), level: z.number(), time: z.string() })

const lines = () =>
	readFileSync(join(open.site.folder, 'site.log'), 'utf8')
		.trim()
		.split('\n')
		.map((text) => line.parse(JSON.parse(text)))

/** What was noted beside the requests themselves while `act` ran. */
async function noted(act: () => Promise<unknown>) {
	const before = lines().length
	await act()
	return lines()
		.slice(before)
		.filter((each) => ['refused', 'too often'].includes(each.act))
		.map(({ time: _, level, ...rest }) => ({ level, ...rest }))
}

const idOf = (person: PersonName): string => {
	const { people } = open.site.cast
	const ids: Partial<Record<PersonName, string>> = {
		approver: people.bakeryApprover.id,
		looker: people.bakeryViewer.id,
		'other approver': people.dentalApprover.id,
	}
	return ids[person] ?? ''
}

// OWASP ASVS 5.0.0, V16.3.2: failed attempts to get at what one may not are logged. 40 is pino's level of a warning.
describe('who is not let through is noted, by who and why and nothing else', () => {
	const refused = (why: 'hidden' | 'forbidden', person: PersonName) => [
		{ level: 40, act: 'refused', why, who: `contact ${idOf(person)}` },
	]

	it.each<{ what: string; person: PersonName; why: 'hidden' | 'forbidden'; path: (proposal: string) => string }>([
		{ what: 'a page of another client', person: 'other approver', why: 'hidden', path: (id) => `/proposal/${id}` },
		{ what: 'a page of the studio', person: 'approver', why: 'hidden', path: () => '/studio/settings' },
		{ what: 'an answer’s page', person: 'looker', why: 'forbidden', path: (id) => `/proposal/${id}/approve` },
	])('$what', async ({ person, why, path }) => {
		expect(await noted(() => open.ask(person, path(things.proposal)))).toEqual(refused(why, person))
	})

	it('an answer to another client’s proposal, and one by whoever may only look', async () => {
		const answer = () => ({ method: 'POST', ...urlencoded([['once', 'x']]) })
		for (const [person, why] of [
			['other approver', 'hidden'],
			['looker', 'forbidden'],
		] as const)
			expect(await noted(() => open.ask(person, `/proposal/${things.proposal}/answer/skip`, answer()))).toEqual(
				refused(why, person),
			)
	})

	it('what the desk, a photo’s page and a picture are asked for', async () => {
		const json = { method: 'POST', body: '{}', headers: { 'content-type': 'application/json' } }
		for (const act of ['price', 'save', 'propose', 'grow', 'substitutes'])
			expect(await noted(() => open.ask('approver', `/studio/proposal/${things.proposal}/${act}`, json))).toEqual(
				refused('hidden', 'approver'),
			)
		const sent = { method: 'POST', ...photo() }
		expect(await noted(() => open.ask('approver', `/studio/clients/${things.client}/photo`, sent))).toEqual(
			refused('hidden', 'approver'),
		)
		const picture = `/proposal/${things.proposal}/picture/${things.revision.slice(0, 16)}.svg`
		expect(await noted(() => open.ask('other approver', picture))).toEqual(refused('hidden', 'other approver'))
	})

	it('an action of the studio, and the page that it would lead back to', async () => {
		const call = { method: 'POST', ...called(actionNamed('remind').id, formOf('remind', things)) }
		const [once] = refused('hidden', 'approver')
		expect(await noted(() => open.ask('approver', '/studio', call))).toEqual([once, once])
	})

	it('nothing of whoever is let through', async () => {
		expect(await noted(() => open.ask('approver', `/proposal/${things.proposal}`))).toEqual([])
	})
})

it('a limit that is hit is noted, without the address or the sender', async () => {
	const sender = freshSender()
	const { body, headers } = urlencoded([['address', 'asked.often@elsewhere.example']])
	const ask = () =>
		send(open.site.url, '/sign-in/ask', { method: 'POST', body, headers: { ...headers, 'x-forwarded-for': sender } })
	const found = await noted(async () => {
		for (let turn = 0; turn < 6; turn += 1) await ask()
	})
	expect(found).toEqual([{ level: 40, act: 'too often', limit: 'links to one address asked by one sender' }])
	const all = readFileSync(join(open.site.folder, 'site.log'), 'utf8')
	expect(all).not.toContain('asked.often')
	expect(all).not.toContain(sender)
})
