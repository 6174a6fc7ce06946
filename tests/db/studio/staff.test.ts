import { describe, expect, test } from 'vitest'
import { sessionAdapter } from '@/db/sign-in/adapter'
import { askForLink } from '@/db/sign-in/ask'
import { personOfSession } from '@/db/sign-in/session'
import { holderOfLink, keepToken } from '@/db/sign-in/token'
import { hireStaff } from '@/db/studio/hire'
import { endStaff, listStaff } from '@/db/studio/staff'
import { viewerOf } from '@/db/viewer'
import { must } from '@/demo/play/must'
import { sha256 } from '@/lib/record/hash'
import { id } from '@/lib/units/id'
import { changesOf, refused } from '../stage/rows'
import { stranger, studio } from '../stage/studio'

const of = studio()
const designer = () => of.as('designer')
const helper = () => of.cast().people.helper
const now = () => new Date(of.cast().now)

describe('who works here', () => {
	test('is known by name, address and role, and oneself as oneself', async () => {
		const { name, address } = of.cast().people.designer
		expect((await listStaff(await designer())).map(({ id: _, ...member }) => member)).toEqual([
			{ name, address, role: 'designer', isMe: true },
			{ name: helper().name, address: helper().address, role: 'helper', isMe: false },
		])
	})

	test.each(['helper', 'bakeryApprover', 'nobody'] as const)('is nothing for %s', async (who) => {
		expect(await listStaff(await of.as(who))).toEqual([])
	})
})

describe('a helper who leaves', () => {
	test('is out at once: session, link and rights, with a line in the record', async () => {
		const session = 'a session of the helper'
		await sessionAdapter(now).createSession({ sessionToken: session, userId: helper().id })
		const link = sha256('their link')
		await keepToken(helper().id, { linkHash: link, codeHash: sha256('code'), askHash: sha256('ask') }, now())
		const end = async () => endStaff(await designer(), helper().id, of.stamp())
		const { said, did } = await changesOf(of.folder(), end)
		expect([said, did]).toEqual([{ ok: true }, { event: '+1', session: '-1', sign_in_token: '-1', staff: '~1' }])
		expect(await personOfSession(session, now())).toBeUndefined()
		expect(await holderOfLink(link, now())).toBeUndefined()
		expect((await viewerOf(helper().id)).is).toBe('nobody')
		expect((await listStaff(await designer())).map(({ role }) => role)).toEqual(['designer'])
		await askForLink({ address: helper().address, askHash: sha256('later'), to: '/' }, of.stamp())
		const asked = stranger(of.folder(), (sqlite) =>
			sqlite.prepare("SELECT person_id FROM outbox WHERE message = 'sign-in link' ORDER BY id DESC").pluck().get(),
		)
		expect(asked).toBeNull()
	})

	test('may come back, in the role of that day', async () => {
		await endStaff(await designer(), helper().id, of.stamp())
		const back = { name: helper().name, address: helper().address, role: 'helper' } as const
		const { said, did } = await changesOf(of.folder(), async () => hireStaff(await designer(), back, of.stamp()))
		expect(did).toEqual({ event: '+1', staff: '~1' })
		expect(must('hired', said).person).toBe(helper().id)
		expect(await viewerOf(helper().id)).toMatchObject({ is: 'staff', role: 'helper' })
	})

	test('leaves once: pressed again it is as it was', async () => {
		await endStaff(await designer(), helper().id, of.stamp())
		const viewer = await designer()
		expect(await refused(of.folder(), () => endStaff(viewer, helper().id, of.stamp()))).toEqual({ ok: true })
	})

	test('is no contact, and nobody at all', async () => {
		const viewer = await designer()
		const nobody = id<'person'>('01999999-0000-7000-8000-00000000000a')
		for (const who of [of.cast().people.bakeryApprover.id, nobody])
			expect(await refused(of.folder(), () => endStaff(viewer, who, of.stamp()))).toEqual({ ok: false, why: 'hidden' })
	})
})

test('nobody shuts themselves out', async () => {
	const viewer = await designer()
	const end = () => endStaff(viewer, of.cast().people.designer.id, of.stamp())
	expect(await refused(of.folder(), end)).toEqual({ ok: false, why: 'that is you' })
})
