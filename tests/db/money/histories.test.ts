import fc from 'fast-check'
import { expect, test } from 'vitest'
import { billingOf } from '@/db/money/bills/bills'
import { findAccount } from '@/db/money/find'
import { ledgerOf } from '@/db/money/ledger'
import { read } from '@/db/open'
import { approve } from '@/db/proposals/answers/approve'
import { readDraft } from '@/db/proposals/draft'
import { publish } from '@/db/proposals/publish'
import { readOffer } from '@/db/proposals/read-offer'
import { steer } from '@/db/proposals/steer'
import { verify } from '@/db/record/verify'
import { chargeCents } from '@/lib/money/charge'
import { accountOf } from '@/lib/money/ledger/account'
import { balanceOf } from '@/lib/money/ledger/effect'
import { cents } from '@/lib/units/cents'
import { dayOf, type Moment } from '@/lib/units/day'
import type { Id } from '@/lib/units/id'
import { found, later, studio } from '../stage/studio'
import { moneyOf } from './steps'

const of = studio()
const { agree, byHand, end, numbers } = moneyOf(of)
const clients = ['bakery', 'clapboard', 'creditUnion', 'approved', 'cancelled', 'inn'] as const
type Key = (typeof clients)[number]
const approvers = {
	bakery: 'bakeryApprover',
	clapboard: 'clapboardApprover',
	creditUnion: 'creditUnionApprover',
	approved: 'approvedApprover',
	cancelled: 'cancelledApprover',
	inn: 'innApprover',
} as const
const pots = {
	bakery: ['bakeryLeft'],
	clapboard: ['clapboardLeft'],
	creditUnion: ['creditUnionLeft', 'branchLeft'],
	approved: ['approvedLeft'],
	cancelled: ['cancelledLeft'],
	inn: ['innTerrace'],
} as const

const client = fc.constantFrom(...clients)
const acts = fc.oneof(
	{ weight: 4, arbitrary: fc.record({ do: fc.constant('approve' as const), client }) },
	{ weight: 3, arbitrary: fc.record({ do: fc.constant('install' as const), client }) },
	{ weight: 3, arbitrary: fc.record({ do: fc.constant('reopen' as const), client }) },
	{ weight: 1, arbitrary: fc.record({ do: fc.constant('cancel' as const), client, remains: fc.nat(20_000) }) },
	{
		weight: 2,
		arbitrary: fc.record({
			do: fc.constant('agree' as const),
			client,
			count: fc.integer({ min: 1, max: 4 }),
			price: fc.integer({ min: 100, max: 90_001 }),
		}),
	},
	{ weight: 1, arbitrary: fc.record({ do: fc.constant('end' as const) }) },
	{ weight: 3, arbitrary: fc.record({ do: fc.constant('wait' as const), days: fc.integer({ min: 1, max: 40 }) }) },
)
type Act = typeof acts extends fc.Arbitrary<infer Of> ? Of : never

/** The steps of a history; one that the house refuses changes nothing. */
function world() {
	let now: Moment = of.cast().now
	const agreements: Id<'agreement'>[] = []
	const designer = () => of.as('designer')
	const offer = async (key: Key) => found(await readOffer(await designer(), of.cast().proposals[key], of.stamp(now)))

	async function yes(key: Key): Promise<void> {
		const { hash: revision, offer: shown } = await offer(key)
		const answering = { proposal: of.cast().proposals[key], revision, once: of.once(), browser: 'a test' }
		const wanted = { option: shown?.options[0]?.key ?? '', places: {}, extras: [], leftOut: [], purchaseOrder: 'B-7' }
		await approve(await of.as(approvers[key]), { ...answering, ...wanted }, of.stamp(now))
	}

	async function move(key: Key, step: 'install' | 'reopen' | 'cancel', remains = 0): Promise<void> {
		const steering = { proposal: of.cast().proposals[key], step, reason: 'So it goes.', once: of.once() }
		const moved = await steer(await designer(), { ...steering, remains: cents(remains) }, of.stamp(now))
		if (step !== 'reopen' || !moved.ok) return
		const { version } = found(await readDraft(await designer(), steering.proposal, of.stamp(now)))
		await publish(await designer(), { proposal: steering.proposal, version, once: of.once() }, of.stamp(now))
	}

	return {
		now: () => now,
		take: async (act: Act): Promise<void> => {
			if (act.do === 'approve') return yes(act.client)
			if (act.do === 'install' || act.do === 'reopen') return move(act.client, act.do)
			if (act.do === 'cancel') return move(act.client, act.do, act.remains)
			if (act.do === 'agree') {
				const plan = { is: 'every months', months: 1, count: act.count, start: { is: 'on approval' } } as const
				const { client: key, price } = act
				agreements.push(
					await agree({ client: key, by: approvers[key], containers: pots[key], cents: price, plan, at: now }),
				)
				return
			}
			if (act.do === 'end') {
				const last = agreements.pop()
				if (last !== undefined) end(last, dayOf(now, 'America/New_York'))
				return
			}
			now = later(now, act.days * 86_400_000)
		},
	}
}

/** Of each client: every bill whose day has come is asked for once, at what it comes to, and nothing else is. */
function judge(key: Key, viewer: Awaited<ReturnType<typeof of.as>>, at: Moment): void {
	read((db) => {
		const account = findAccount(db, viewer, 'see the account', of.cast().clients[key].id, { at })
		if (!account.ok) throw new Error(key)
		const { bills, issued } = billingOf(db, account)
		const due = bills.map(({ bill }) => bill).filter(({ dated }) => dated !== null && dated.on <= account.today)
		const owed = Object.fromEntries(due.map(({ key: of, charge }) => [of, chargeCents(charge)]))
		const asked: Record<string, number> = {}
		for (const { key: of, leftCents } of issued) asked[of] = (asked[of] ?? 0) + leftCents
		const standing = Object.fromEntries(Object.entries(asked).filter(([, left]) => left !== 0))
		expect(standing).toEqual(owed)
		const ledger = ledgerOf(db, account.client.id)
		const { openCents, creditCents } = accountOf(ledger)
		expect(openCents - creditCents).toBe(balanceOf(ledger))
		expect(openCents).toBe(Object.values(owed).reduce((all, each) => all + each, 0))
	})
}

const seen = new Set<string>()

test.each([3, 5, 8, 13, 21, 34])('whatever people do, every cent is asked for once: history %i', async (seed) => {
	const [history = []] = fc.sample(fc.array(acts, { minLength: 14, maxLength: 18 }), { numRuns: 1, seed })
	const stage = world()
	const system = await of.as('system')
	for (const act of history) {
		await stage.take(act)
		const { invoices, credits } = await byHand(null, stage.now())
		if (invoices + credits > 0) seen.add(act.do)
		expect(await byHand(null, stage.now())).toEqual({ ok: true, invoices: 0, credits: 0 })
		for (const key of clients) judge(key, system, stage.now())
	}
	const counted = numbers().filter((number) => number.startsWith('2026'))
	expect(counted).toEqual(counted.map((_, index) => `2026-${String(index + 1).padStart(4, '0')}`))
	expect(found(await verify(system)).broken).toBeNull()
})

test('and the histories were not idle', () => {
	expect([...seen].toSorted()).toEqual(['agree', 'approve', 'cancel', 'end', 'install', 'reopen', 'wait'])
})
