import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { z } from 'zod'
import { type Leased, leaseMail } from '@/db/outbox/lease'
import { viewerOf } from '@/db/viewer'
import { doors } from '@/demo/cast/people'
import type { Seeded } from '@/demo/seed'
import { day } from '@/lib/units/day'
import { type Played, played, rowsIn } from './stage'

const waiting = ['bakery', 'dental', 'vet', 'clapboard', 'fieldstone', 'stucco'] as const

let of: Played
let cast: Seeded
let due: Leased[]
let outbox: string[]

beforeAll(async () => {
	of = await played(day('2026-10-06'))
	cast = of.cast
	outbox = rowsIn(of.folder).outbox ?? []
	due = await leaseMail(await viewerOf('system'), 1000, { at: cast.now })
})
afterAll(() => of.end())

describe('the outbox after the play', () => {
	test('holds for the sender what asks for an answer, one mail a contact, and nothing else', () => {
		const facts = z.strictObject({ proposal: z.string(), number: z.literal(1) })
		const left = due.map((mail) => [mail.message, mail.person, facts.parse(mail.facts).proposal])
		const asked = waiting.flatMap((client) =>
			doors
				.filter(([of]) => of === client)
				.map(([, person]) => ['proposal published', cast.people[person].id, cast.proposals[client]]),
		)
		expect(left.toSorted()).toEqual(asked.toSorted())
		expect(left).toHaveLength(12)
	})

	test('has sent all the rest, of every message that the play brings about', () => {
		const sent = outbox.filter((row) => !due.some(({ id }) => row.includes(id)))
		const times = z.tuple([z.string(), z.string()]).rest(z.unknown())
		const messages = new Set(sent.map((row) => times.parse(JSON.parse(row))[1]))
		expect([...messages].toSorted()).toEqual([
			'approval received',
			'approved',
			'cancelled',
			'change asked for',
			'proposal published',
			'reminder',
			'skipped',
			'something is wrong',
			'taken back',
			'visit made',
		])
		expect(sent.length).toBeGreaterThan(60)
	})
})
