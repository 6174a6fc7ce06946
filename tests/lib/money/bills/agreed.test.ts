import { describe, expect, test } from 'vitest'
import { type AgreementDocument, documentSchema } from '@/lib/agreement/document/document'
import { makeDocument } from '@/lib/agreement/document/make'
import { defaultTemplate } from '@/lib/agreement/template/default-template'
import { agreedOf, type Signed } from '@/lib/money/bills/agreed'
import { billsOfAgreement, instalmentKey } from '@/lib/money/bills/of-agreement'
import { hashOf } from '@/lib/record/hash'
import { cents } from '@/lib/units/cents'
import { day } from '@/lib/units/day'
import { agreementId, facts, terms } from '../../agreement/sample'
import { charge } from '../sample'

function document(number: number, amounts: readonly number[]): AgreementDocument {
	const issue = { agreement: agreementId, number, supersedes: number === 1 ? null : hashOf({ number }) }
	const made = makeDocument(terms, facts, defaultTemplate, issue)
	if (!made.ok) throw new Error(JSON.stringify(made.problems))
	const [first, second] = made.document.seasons
	const instalments = made.document.instalments.map((each, index) => ({ ...each, cents: cents(amounts[index] ?? 0) }))
	const total = amounts.reduce((all, each) => all + each, 0)
	const priced = [
		{ ...first, price: { is: 'fixed', cents: total } },
		{ ...second, price: { is: 'fixed', cents: 0 } },
		...made.document.seasons.slice(2),
	]
	return documentSchema.parse({ ...made.document, seasons: priced, instalments, totalCents: total })
}

const signed = (documents: readonly AgreementDocument[], more: Partial<Signed> = {}): Signed => ({
	documents,
	signedOn: day('2026-11-20'),
	madeOn: () => null,
	endedOn: null,
	tax: { isTaxed: true, places: [{ containers: 3, milliPercent: 6000 }] },
	asked: new Map(),
	...more,
})
const first = document(1, [30_000, 20_000, 10_000, 5000])
const keys = (of: Signed) => billsOfAgreement(agreedOf(of)).map(({ key }) => key)
const keyOf = (nth: number, since: number) => instalmentKey({ agreement: agreementId }, nth, since)

describe('a signed agreement as it is billed', () => {
	test('each instalment on its day with its own tax', () => {
		const { instalments } = agreedOf(signed([first]))
		expect(instalments.map(({ dueOn, charge: of }) => [dueOn, of])).toEqual([
			['2026-12-01', charge(30_000, [6000, 30_000, 1800])],
			['2027-03-01', charge(20_000, [6000, 20_000, 1200])],
			['2027-06-01', charge(10_000, [6000, 10_000, 600])],
			['2027-09-01', charge(5000, [6000, 5000, 300])],
		])
	})

	test('an amendment makes another bill of what it changes alone, and changing it back is another again', () => {
		const second = document(2, [30_000, 25_000, 10_000, 5000])
		expect(keys(signed([first, second]))).toEqual([keyOf(1, 1), keyOf(2, 2), keyOf(3, 1), keyOf(4, 1)])
		const third = document(3, [30_000, 20_000, 10_000, 5000])
		expect(keys(signed([first, second, third]))).toEqual([keyOf(1, 1), keyOf(2, 3), keyOf(3, 1), keyOf(4, 1)])
	})

	test('what was asked for keeps its tax at another rate, unless the amount is another', () => {
		const asked = new Map([
			[keyOf(1, 1), charge(30_000, [5000, 30_000, 1500])],
			[keyOf(2, 1), charge(19_000, [5000, 19_000, 950])],
		])
		const { instalments } = agreedOf(signed([first], { asked }))
		expect(instalments.slice(0, 2).map((each) => each.charge)).toEqual([
			charge(30_000, [5000, 30_000, 1500]),
			charge(20_000, [6000, 20_000, 1200]),
		])
	})

	test('ended early it owes what fell due until then, that day in it', () => {
		const owedOn = (on: string) => agreedOf(signed([first], { endedOn: day(on) })).ended?.owedCents
		expect([owedOn('2027-02-28'), owedOn('2027-03-01')]).toEqual([31_800, 53_000])
	})

	test('nothing signed is a broken promise', () => {
		expect(() => agreedOf(signed([]))).toThrow('nothing was signed')
	})
})
