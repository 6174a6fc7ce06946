import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { currencyCodes, isCurrency, moneyFormat } from '@/lib/format/money'
import { cents } from '@/lib/units/cents'

const usd = moneyFormat('USD')
const ledger = moneyFormat('USD', { cents: false })

describe('money to the cent', () => {
	test.each([
		{ name: 'a season', amount: 118_000, says: '$1,180.00' },
		{ name: 'a deposit', amount: 23_709, says: '$237.09' },
		{ name: 'less than a unit', amount: 5, says: '$0.05' },
		{ name: 'nothing', amount: 0, says: '$0.00' },
		{ name: 'a discount, with a minus and no hyphen', amount: -1250, says: '−$12.50' },
		{ name: 'a large discount', amount: -123_456_789, says: '−$1,234,567.89' },
	])('$name: $says', ({ amount, says }) => {
		expect(usd(cents(amount))).toBe(says)
	})

	// ISO 4217: ten currencies of two decimals.
	test.each([
		{ code: 'USD', says: '$94,031.07' },
		{ code: 'CAD', says: '$94,031.07' },
		{ code: 'EUR', says: '€94,031.07' },
		{ code: 'GBP', says: '£94,031.07' },
		{ code: 'AUD', says: '$94,031.07' },
		{ code: 'NZD', says: '$94,031.07' },
		{ code: 'CHF', says: 'CHF 94,031.07' },
		{ code: 'SEK', says: 'kr 94,031.07' },
		{ code: 'DKK', says: 'kr 94,031.07' },
		{ code: 'NOK', says: 'kr 94,031.07' },
	])('$code: $says', ({ code, says }) => {
		expect(moneyFormat(code)(cents(9_403_107)).replace('\u00a0', ' ')).toBe(says)
		expect(isCurrency(code)).toBe(true)
	})

	test('knows those ten', () => {
		expect(currencyCodes).toHaveLength(10)
	})

	test.each(['JPY', 'usd', 'XXX', '', 'constructor', '__proto__'])('refuses %j', (code) => {
		expect(isCurrency(code)).toBe(false)
		expect(() => moneyFormat(code)).toThrow(`moneyFormat: ${code} is not a currency of the studio`)
	})

	test('reads back digit by digit, up to ten thousand million', () => {
		fc.assert(
			fc.property(fc.integer({ min: -1_000_000_000_000, max: 1_000_000_000_000 }), (amount) => {
				const text = usd(cents(amount))
				const digits = text.replace(/[^\d]/g, '')
				expect(Number(digits)).toBe(Math.abs(amount))
				expect(text.at(-3)).toBe('.')
				expect(text.startsWith('−')).toBe(amount < 0)
				expect(text).not.toContain('-')
			}),
			{ numRuns: 500 },
		)
	})
})

describe('money in whole units, for a ledger', () => {
	test.each([
		{ name: 'whole', amount: 118_000, says: '$1,180' },
		{ name: 'under a half', amount: 118_049, says: '$1,180' },
		{ name: 'a half and over', amount: 118_050, says: '$1,181' },
		{ name: 'a discount', amount: -77_600, says: '−$776' },
		{ name: 'nothing', amount: 0, says: '$0' },
	])('$name: $says', ({ amount, says }) => {
		expect(ledger(cents(amount))).toBe(says)
	})
})
