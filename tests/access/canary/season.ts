import { expect } from 'vitest'
import type { PersonKey } from '@/demo/cast/people'
import { bodyFor, formOf, pageWith } from '../ask/bodies'
import { actionNamed } from '../ask/build'
import { called } from '../ask/forms'
import { open } from '../site/here'
import { mailIsOut } from '../site/snapshot'
import { thingsOf } from '../site/things'
import { as, post } from './as'

/** Publish, remind, approve, ask for a change, skip, approve by phone: one of each, so that every kind of mail goes out. */
export async function theSeasonGoesOn(): Promise<void> {
	const { folder, cast } = open.site
	const designer = as('designer')
	const of = (key: 'bakery' | 'dental' | 'vet' | 'stucco' | 'clapboard') => thingsOf(folder, cast, key)
	const act = async (name: string, things: ReturnType<typeof of>) => {
		const said = await designer(pageWith(name, things), post(called(actionNamed(name).id, formOf(name, things))))
		expect(said.headers['x-action-redirect']).toBeDefined()
	}
	for (const key of ['bakery', 'clapboard'] as const) await act('publish', of(key))
	for (const key of ['bakery', 'dental', 'clapboard'] as const) await act('remind', of(key))
	const answer = async (who: PersonKey, key: Parameters<typeof of>[0], kind: string) => {
		const row = { route: `/proposal/[proposal]/answer/${kind}` }
		const said = await as(who)(`/proposal/${of(key).proposal}/answer/${kind}`, post(bodyFor(row, of(key), null)))
		expect(said.headers.location).toMatch(/\/done$/)
	}
	await answer('bakeryApprover', 'bakery', 'approve')
	await answer('vetApprover', 'vet', 'change')
	await answer('stuccoApprover', 'stucco', 'skip')
	await act('takeApproval', of('dental'))
	await mailIsOut(folder)
}
