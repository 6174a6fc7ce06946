import { describe, expect, test } from 'vitest'
import { type Agreed, billsOfAgreement } from '@/lib/money/bills/of-agreement'
import { chargeCents } from '@/lib/money/charge'
import { cents } from '@/lib/units/cents'
import { day } from '@/lib/units/day'
import { agreementId, charge } from '../sample'

const due = (dueOn: string, amount: number) => ({ dueOn: day(dueOn), cents: cents(amount) })
const agreed: Agreed = {
	agreement: agreementId(1),
	signedOn: day('2026-12-10'),
	charge: charge(90_000, [6000, 70_000, 4200]),
	instalments: [due('2027-04-01', 31_400), due('2026-12-01', 31_401), due('2027-07-01', 31_399)],
	ended: null,
}
const ended = (on: string, owed: number): Agreed => ({
	...agreed,
	ended: { on: day(on), owedCents: cents(owed), netDays: 15 },
})
const billed = (of: Agreed) =>
	billsOfAgreement(of).map(({ part, dated, charge: each }) => [
		part.is === 'instalment' ? `${part.nth} of ${part.of}` : part.is,
		chargeCents(each),
		dated?.on,
		dated?.netDays,
	])

const first = ['1 of 3', 31_401, '2026-12-10', 0]
const second = ['2 of 3', 31_400, '2027-04-01', 0]

describe('what is asked for of an agreement', () => {
	test('its instalments in the order of their days, none before it is signed', () => {
		expect(billed(agreed)).toEqual([first, second, ['3 of 3', 31_399, '2027-07-01', 0]])
	})

	test('tax and net sum to those of the agreement', () => {
		const parts = billsOfAgreement(agreed).map((bill) => bill.charge)
		const figures = parts.map(({ netCents, tax }) => [netCents, tax[0]?.baseCents ?? 0, tax[0]?.cents ?? 0])
		expect(figures).toEqual([
			[30_001, 23_334, 1400],
			[30_000, 23_333, 1400],
			[29_999, 23_333, 1400],
		])
	})

	test.each([
		{ name: 'what was asked for is owed', of: ended('2027-04-20', 62_801), bills: [first, second] },
		{
			name: 'more is owed than was asked for',
			of: ended('2027-04-20', 70_000),
			bills: [first, second, ['remains', 7199, '2027-04-20', 15]],
		},
		{
			name: 'less is owed than was asked for: the latest gives way',
			of: ended('2027-04-20', 40_000),
			bills: [first, ['2 of 3', 8599, '2027-04-01', 0]],
		},
		{ name: 'ended on the day of an instalment', of: ended('2027-04-01', 62_801), bills: [first, second] },
		{ name: 'ended the day before one', of: ended('2027-03-31', 31_401), bills: [first] },
		{ name: 'nothing is owed', of: ended('2027-04-20', 0), bills: [] },
	])('ended: $name', ({ of, bills }) => {
		expect(billed(of)).toEqual(bills)
	})

	test('an instalment of nothing is not asked for', () => {
		const instalments = [due('2027-01-02', 0), due('2027-02-02', 94_200)]
		expect(billed({ ...agreed, instalments })).toEqual([['2 of 2', 94_200, '2027-02-02', 0]])
	})

	test('what does not sum is a broken promise', () => {
		expect(() => billed({ ...agreed, instalments: agreed.instalments.slice(1) })).toThrow(
			'62800 for an agreement of 94200',
		)
		expect(() => billed(ended('2027-04-20', 94_201))).toThrow('94201 owed of an agreement of 94200')
	})
})
