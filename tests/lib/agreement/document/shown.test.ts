import { describe, expect, test } from 'vitest'
import { changesTo, shownTo } from '@/lib/agreement/document/shown'
import { showsAmount } from '@/lib/agreement/document/shows-amount'
import { moneyFormat } from '@/lib/format/money'
import { cents } from '@/lib/units/cents'
import { issued } from './issued'

describe('whether a text shows an amount', () => {
	test.each(['USD', 'CAD', 'EUR', 'GBP', 'AUD', 'NZD', 'CHF', 'SEK', 'DKK', 'NOK'])('in %s', (code) => {
		for (const amount of [0, 5, 61_250, 100_000_000]) {
			expect(showsAmount(`It costs ${moneyFormat(code)(cents(amount))} in all.`)).toBe(true)
			expect(showsAmount(moneyFormat(code, { cents: false })(cents(amount)))).toBe(true)
		}
	})

	test.each(['612.50', '1.200,50', 'USD 40', '40 dollars', '£3', '3 Euro', '50 cents'])('“%s”: yes', (text) => {
		expect(showsAmount(text)).toBe(true)
	})

	test.each([
		'It begins on 1 December 2026 and ends on 30 November 2027.',
		'urn, 16 in across; trough, 91.4 cm by 20.3 cm',
		'with 30 days of notice, 2 waterings, 4 instalments',
		'You are welcome; the century’s scent recedes.',
	])('“%s”: no', (text) => {
		expect(showsAmount(text)).toBe(false)
	})
})

describe('an agreement as it is shown', () => {
	test('is whole to who may read its money', () => {
		const document = issued()
		const { clauses, leftOut, money } = shownTo(document, true)
		expect(clauses).toEqual(document.clauses)
		expect(leftOut).toBe(0)
		expect(money?.prices).toEqual(document.seasons.map(({ price }) => price))
		expect(money?.instalments).toEqual(document.instalments)
	})

	test('is without an amount to who may only look', () => {
		const document = issued()
		const shown = shownTo(document, false)
		expect(shown.money).toBeNull()
		expect(document.clauses.filter((clause) => !shown.clauses.includes(clause)).map(({ key }) => key)).toEqual([
			'price',
			'instalments',
		])
		expect(shown.leftOut).toBe(2)
		expect(showsAmount(JSON.stringify(shown))).toBe(false)
	})

	test('is without a clause that names an amount in its title alone', () => {
		const document = issued()
		const clauses = document.clauses.map((clause, index) => (index === 0 ? { ...clause, title: 'For $5' } : clause))
		expect(shownTo({ ...document, clauses }, false).leftOut).toBe(3)
	})

	test('has changes without an amount, before or after', () => {
		const changes = [
			{ of: 'Ends', was: '30 November 2027', is: '30 November 2028' },
			{ of: 'Price of winter', was: '$612.50', is: 'quoted each season' },
			{ of: 'Price of spring', was: null, is: '$1.00' },
		]
		expect(changesTo(changes, false)).toEqual(changes.slice(0, 1))
		expect(changesTo(changes, true)).toEqual(changes)
	})
})
