import { describe, expect, test } from 'vitest'
import { type Agreed, billsOfAgreement } from '@/lib/money/bills/of-agreement'
import { chargeCents } from '@/lib/money/charge'
import { cents } from '@/lib/units/cents'
import { day } from '@/lib/units/day'
import { agreementId, charge } from '../sample'

const due = (dueOn: string | null, net: number, tax: number, since = 1) => ({
	dueOn: dueOn === null ? null : day(dueOn),
	charge: charge(net, [6000, net - 100, tax]),
	since,
})
const agreed: Agreed = {
	agreement: agreementId(1),
	signedOn: day('2026-12-10'),
	instalments: [due('2027-04-01', 30_000, 1400), due('2026-12-01', 30_001, 1402), due('2027-07-01', 29_999, 1397)],
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

const early = ['2 of 3', 31_403, '2026-12-10', 0]
const middle = ['1 of 3', 31_400, '2027-04-01', 0]

describe('what is asked for of an agreement', () => {
	test('its instalments as they were signed, none before that day', () => {
		expect(billed(agreed)).toEqual([middle, early, ['3 of 3', 31_396, '2027-07-01', 0]])
	})

	test('each with the amount before tax that was signed, and its own tax', () => {
		expect(billsOfAgreement(agreed).map((bill) => bill.charge)).toEqual(agreed.instalments.map((each) => each.charge))
	})

	test.each([
		{ name: 'what was asked for is owed', of: ended('2027-04-20', 62_803), bills: [early, middle] },
		{
			name: 'more is owed than was asked for',
			of: ended('2027-04-20', 70_000),
			bills: [early, middle, ['remains', 7197, '2027-04-20', 15]],
		},
		{
			name: 'less is owed than was asked for: the latest gives way',
			of: ended('2027-04-20', 40_000),
			bills: [early, ['1 of 3', 8597, '2027-04-01', 0]],
		},
		{ name: 'ended on the day of an instalment', of: ended('2027-04-01', 62_803), bills: [early, middle] },
		{ name: 'ended the day before one', of: ended('2027-03-31', 31_403), bills: [early] },
		{ name: 'nothing is owed', of: ended('2027-04-20', 0), bills: [] },
	])('ended: $name', ({ of, bills }) => {
		expect(billed(of)).toEqual(bills)
	})

	test('what remains has the tax of what was not asked for', () => {
		const [, , remains] = billsOfAgreement(ended('2027-04-20', 94_199))
		expect(remains?.charge).toEqual(charge(29_999, [6000, 29_899, 1397]))
	})

	test('one that waits for a visit has no day, keeps its number, and falls away with the end', () => {
		const instalments = [due(null, 30_000, 1400), due('2027-01-01', 20_000, 900)]
		const waiting = ['1 of 2', 31_400, undefined, undefined]
		expect(billed({ ...agreed, instalments })).toEqual([waiting, ['2 of 2', 20_900, '2027-01-01', 0]])
		const end = { on: day('2027-06-01'), owedCents: cents(20_900), netDays: 0 }
		expect(billed({ ...agreed, instalments, ended: end })).toEqual([['2 of 2', 20_900, '2027-01-01', 0]])
	})

	test('one that an amendment changed is another bill; one that it left alone is the same', () => {
		const before = billsOfAgreement(agreed).map(({ key }) => key)
		const [first, second, third] = agreed.instalments
		if (first === undefined || second === undefined || third === undefined) throw new Error('three instalments')
		const after = billsOfAgreement({ ...agreed, instalments: [first, second, { ...third, since: 2 }] })
		const kept = after.map(({ key }) => key)
		expect(kept.slice(0, 2)).toEqual(before.slice(0, 2))
		expect(before).not.toContain(kept[2])
	})

	test('an instalment of nothing is not asked for', () => {
		const instalments = [{ ...due('2027-01-02', 0, 0), charge: charge(0) }, due('2027-02-02', 90_000, 4200)]
		expect(billed({ ...agreed, instalments })).toEqual([['2 of 2', 94_200, '2027-02-02', 0]])
	})

	test('more owed than it came to is a broken promise', () => {
		expect(() => billed(ended('2027-04-20', 94_200))).toThrow('94200 owed of an agreement of 94199')
	})
})
