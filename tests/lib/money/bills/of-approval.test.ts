import { describe, expect, test } from 'vitest'
import { type Approval, billsOfApproval, type Since } from '@/lib/money/bills/of-approval'
import { chargeCents } from '@/lib/money/charge'
import { cents } from '@/lib/units/cents'
import { day } from '@/lib/units/day'
import { type Asked, charge, proposalId, quoteOf, revision } from '../sample'

const approvedOn = day('2026-10-09')
const installedOn = day('2026-11-20')
const cancelledOn = day('2026-11-02')
const household = { kind: 'household', netDays: 30, depositPercent: 50, agreed: 0 } as const
const business = { ...household, kind: 'business' } as const
const apart = charge(44_701, [6000, 44_701, 2682])

const approval = (asked: Omit<Asked, 'apart'>, since: Since): Approval => ({
	...{ proposal: proposalId(1), revision: revision(1), approvedOn, since },
	quote: quoteOf({ ...asked, apart }),
})
const billed = (asked: Omit<Asked, 'apart'>, since: Since) =>
	billsOfApproval(approval(asked, since)).map(({ part, dated, charge: of }) => [
		part.is,
		chargeCents(of),
		dated?.on ?? null,
		dated?.netDays ?? null,
	])
const approved = { is: 'approved' } as const
const installed = { is: 'installed', on: installedOn } as const
const cancelled = (remains: number) => ({ is: 'cancelled', on: cancelledOn, remainsCents: cents(remains) }) as const

describe('what is asked for of an approval', () => {
	test.each([
		{
			name: 'a household: half at once, half when it is in, the odd cent first',
			of: billed(household, approved),
			bills: [
				['deposit', 23_692, approvedOn, 0],
				['balance', 23_691, null, null],
			],
		},
		{
			name: 'a household whose season is in',
			of: billed(household, installed),
			bills: [
				['deposit', 23_692, approvedOn, 0],
				['balance', 23_691, installedOn, 0],
			],
		},
		{
			name: 'no deposit',
			of: billed({ ...household, depositPercent: 0 }, approved),
			bills: [['whole', 47_383, null, null]],
		},
		{
			name: 'everything at once',
			of: billed({ ...household, depositPercent: 100 }, approved),
			bills: [['whole', 47_383, approvedOn, 0]],
		},
		{ name: 'a business before it is in', of: billed(business, approved), bills: [['whole', 47_383, null, null]] },
		{ name: 'a business, net 30', of: billed(business, installed), bills: [['whole', 47_383, installedOn, 30]] },
		{
			name: 'a business, net 15',
			of: billed({ ...business, netDays: 15 }, installed),
			bills: [['whole', 47_383, installedOn, 15]],
		},
		{
			name: 'a household under an agreement: extras when they are in, the season not here',
			of: billed({ ...household, agreed: 95_000 }, installed),
			bills: [['whole', 47_383, installedOn, 0]],
		},
		{ name: 'reopened: nothing', of: billed(household, { is: 'reopened' }), bills: [] },
		{ name: 'cancelled, nothing remains', of: billed(household, cancelled(0)), bills: [] },
		{
			name: 'cancelled, less than the deposit remains',
			of: billed(household, cancelled(9000)),
			bills: [['deposit', 9000, approvedOn, 0]],
		},
		{
			name: 'cancelled, the deposit remains',
			of: billed(household, cancelled(23_692)),
			bills: [['deposit', 23_692, approvedOn, 0]],
		},
		{
			name: 'cancelled, more than the deposit remains',
			of: billed(household, cancelled(30_001)),
			bills: [
				['deposit', 23_692, approvedOn, 0],
				['remains', 6309, cancelledOn, 0],
			],
		},
		{
			name: 'a business cancels, net as ever',
			of: billed(business, cancelled(12_345)),
			bills: [['remains', 12_345, cancelledOn, 30]],
		},
		{
			name: 'cancelled under an agreement: its instalments ask for their part',
			of: billed({ ...business, agreed: 95_000 }, cancelled(95_000)),
			bills: [],
		},
		{
			name: 'cancelled under an agreement, some of the extras remains',
			of: billed({ ...business, agreed: 95_000 }, cancelled(95_700)),
			bills: [['remains', 700, cancelledOn, 30]],
		},
	])('$name', ({ of, bills }) => {
		expect(of).toEqual(bills)
	})

	test('nothing apart: nothing to ask for here', () => {
		const quote = quoteOf({ ...business, agreed: 61_000, apart: charge(0) })
		expect(billsOfApproval({ ...approval(business, installed), quote })).toEqual([])
	})

	test('each bill has a key of its own, another with the next revision', () => {
		const first = approval(household, installed)
		const keys = [first, { ...first, revision: revision(2) }, { ...first, proposal: proposalId(2) }]
			.flatMap(billsOfApproval)
			.map(({ key }) => key)
		expect(new Set(keys).size).toBe(6)
	})

	test('more cannot remain due than was approved', () => {
		expect(() => billed(household, cancelled(47_384))).toThrow('more than was approved')
	})
})
