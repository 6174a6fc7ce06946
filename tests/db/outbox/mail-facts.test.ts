import { describe, expect, test } from 'vitest'
import { eraseClient } from '@/db/clients/erase'
import { addressee, mailedProposal } from '@/db/outbox/mail-facts'
import { must } from '@/demo/play/must'
import { id } from '@/lib/units/id'
import { stepsOf } from '../proposals/steps'
import { studio, utc } from '../stage/studio'

const of = studio()
const { idOf, page, publish, steer } = stepsOf(of)
const none = '01999999-0000-7000-8000-00000000000a'

describe('to whom a mail goes', () => {
	test.each(['bakeryViewer', 'designer', 'helper'] as const)('%s', async (who) => {
		const { id: person, name, address } = of.cast().people[who]
		const studio = { studio: 'Sedge & Lantern', timeZone: 'America/New_York' }
		const to = { name, address, handle: expect.stringMatching(/^[\w-]{22}$/), ...studio }
		expect(await addressee(await of.as('system'), person)).toEqual(to)
	})

	test('nobody, for one who is not there or was erased', async () => {
		const system = await of.as('system')
		expect(await addressee(system, id<'person'>(none))).toBeUndefined()
		must('erase', await eraseClient(await of.as('designer'), of.cast().clients.stucco.id, of.stamp()))
		expect(await addressee(system, of.cast().people.stuccoApprover.id)).toBeUndefined()
	})
})

describe('what a mail reports', () => {
	const mailed = async (
		key: 'approved' | 'bakery',
		number: number,
		to: Parameters<typeof of.as>[0],
		at = of.cast().now,
	) => {
		const person = to === 'nobody' || to === 'system' ? id<'person'>(none) : of.cast().people[to].id
		return mailedProposal(await of.as('system'), { proposal: idOf(key), number, person }, of.stamp(at))
	}

	test('is the offer of its own revision, with the answer to that', async () => {
		const { offer, before, answer } = await page('approved')
		expect(await mailed('approved', 2, 'approvedApprover')).toEqual({
			offer,
			answer,
			mayApprove: true,
			isOwn: true,
			isForStudio: false,
			timeZone: 'America/New_York',
			coverKey: expect.stringMatching(/^[0-9a-f]{32}$/),
			number: 2,
			remains: null,
			isStanding: true,
			isWaiting: false,
		})
		expect(await mailed('approved', 1, 'approvedApprover')).toMatchObject({
			offer: before,
			answer: { kind: 'change asked for' },
			number: 1,
			isStanding: false,
			isWaiting: false,
		})
	})

	test('is waited for until the next revision, the day to answer by, or the studio takes it back', async () => {
		expect(await mailed('bakery', 1, 'bakeryViewer')).toMatchObject({ isWaiting: true })
		expect(await mailed('bakery', 1, 'bakeryViewer', utc('2026-10-10T04:00'))).toMatchObject({ isWaiting: false })
		await publish('bakery')
		expect(await mailed('bakery', 1, 'bakeryViewer')).toMatchObject({ isWaiting: false })
		expect(await mailed('bakery', 2, 'bakeryViewer')).toMatchObject({ isWaiting: true })
		await steer('bakery', 'withdraw')
		expect(await mailed('bakery', 2, 'bakeryViewer')).toMatchObject({ isWaiting: false })
	})

	test.each([
		['bakeryApprover', true],
		['bakerySecondApprover', true],
		['bakeryViewer', false],
		['designer', false],
	] as const)('tells %s whether the answer is theirs to give: %s', async (who, mayApprove) => {
		expect(await mailed('bakery', 1, who)).toMatchObject({ mayApprove })
	})

	test.each(['dentalApprover', 'helper', 'nobody'] as const)('is not for %s', async (who) => {
		expect(await mailed('bakery', 1, who)).toBeUndefined()
	})

	test('is nothing for a revision that never was, nor once the words are erased', async () => {
		expect(await mailed('bakery', 2, 'bakeryViewer')).toBeUndefined()
		must('erase', await eraseClient(await of.as('designer'), of.cast().clients.bakery.id, of.stamp()))
		expect(await mailed('bakery', 1, 'designer')).toBeUndefined()
	})
})
