import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { price } from '@/lib/pricing/price'
import { dueOf } from '@/lib/pricing/quote/due'
import { cents, sum } from '@/lib/units/cents'
import { job, words } from '../sample'

const home = { kind: 'household', netDays: 15, exemptCertificate: null } as const
const { list } = price(job(), words)
const household = { ...list, payer: home }
const shop = (netDays: 15 | 30) => ({ ...list, payer: { ...list.payer, netDays } })

const onApproval = { is: 'on approval' }
const atInstall = { is: 'at install' }
const byAgreement = { is: 'by agreement' }
const net = (days: number) => ({ is: 'after install', days })

describe('what is due and when', () => {
	test.each([
		{ name: 'a business pays net 15', of: shop(15), total: 40_001, agreed: 0, due: [[40_001, net(15)]] },
		{ name: 'a business pays net 30', of: shop(30), total: 27_500, agreed: 0, due: [[27_500, net(30)]] },
		{
			name: 'a household pays a deposit and the balance, the odd cent first',
			of: household,
			total: 31_255,
			agreed: 0,
			due: [
				[15_628, onApproval],
				[15_627, atInstall],
			],
		},
		{
			name: 'a third as deposit',
			of: { ...household, depositPercent: 33.333 },
			total: 10_000,
			agreed: 0,
			due: [
				[3333, onApproval],
				[6667, atInstall],
			],
		},
		{
			name: 'no deposit asked',
			of: { ...household, depositPercent: 0 },
			total: 8250,
			agreed: 0,
			due: [[8250, atInstall]],
		},
		{
			name: 'an agreement season by its instalments, the rest apart',
			of: { ...shop(30), isUnderAgreement: true },
			total: 104_750,
			agreed: 95_000,
			due: [
				[95_000, byAgreement],
				[9750, net(30)],
			],
		},
		{
			name: 'a household under an agreement pays no deposit on its extras',
			of: { ...household, isUnderAgreement: true },
			total: 61_230,
			agreed: 60_000,
			due: [
				[60_000, byAgreement],
				[1230, atInstall],
			],
		},
		{
			name: 'nothing beside the agreement',
			of: { ...shop(15), isUnderAgreement: true },
			total: 73_300,
			agreed: 73_300,
			due: [[73_300, byAgreement]],
		},
	])('$name', ({ of, total, agreed, due }) => {
		expect(dueOf(cents(total), cents(agreed), of)).toEqual(due.map(([amount, when]) => ({ cents: amount, when })))
	})
})

test('what is due sums to the total, whoever pays', () => {
	const drawn = fc.record({
		kind: fc.constantFrom('business', 'household'),
		netDays: fc.constantFrom(15, 30),
		depositPercent: fc.integer({ min: 0, max: 100_000 }).map((n) => n / 1000),
		isUnderAgreement: fc.boolean(),
		agreed: fc.nat(500_000),
		apart: fc.nat(500_000),
	})
	fc.assert(
		fc.property(drawn, ({ kind, netDays, agreed, apart, ...rest }) => {
			const payer = { ...list.payer, kind, netDays }
			const byInstalments = cents(rest.isUnderAgreement ? agreed : 0)
			const total = cents(byInstalments + apart)
			const due = dueOf(total, byInstalments, { ...list, ...rest, payer })
			expect(sum(due.map((each) => each.cents))).toBe(total)
			expect(sum(due.filter(({ when }) => when.is === 'by agreement').map((each) => each.cents))).toBe(byInstalments)
		}),
		{ numRuns: 500 },
	)
})
