import { describe, expect, test } from 'vitest'
import type { Job } from '@/lib/pricing/job'
import { price } from '@/lib/pricing/price'
import { type Choice, everything } from '@/lib/pricing/quote/choice'
import { quote } from '@/lib/pricing/quote/quote'
import { defaultRates } from '@/lib/pricing/rates'
import { cents } from '@/lib/units/cents'
import { bare, containerId, extra, job, placeId, visit, words } from '../sample'

const asked = (of: Job, choice: Choice = everything) => quote(price(of, words).list, choice)
const topUps = (of: Job, choice: Choice = everything) =>
	asked(of, choice)
		.lines.filter(({ is }) => is === 'minimum visit')
		.map(({ name, cents: amount }) => [name, amount])

/** Door 1: pot 35.00, disposal 6.00, travel 55.00, design 30.00. Door 2: pot 40.00, disposal 6.00, travel 67.00. */
const two = job({
	visits: [visit(1), visit(2, { driveMinutes: 24, taxMilliPercent: 7250 })],
	containers: [bare(1), bare(2, { place: placeId(2), openingCm2: 2000 })],
	extras: [extra('wreath', { minutes: 18.5 }), extra('garland', { place: placeId(2), minutes: 130 })],
})

describe('the minimum visit', () => {
	test.each([
		{
			name: 'each visit is lifted to it by a line that says so',
			of: two,
			choice: everything,
			lifted: [
				['door 1', 4900],
				['door 2', 6200],
			],
		},
		{
			name: 'an extra counts towards it, at its own door',
			of: two,
			choice: { leftOut: [], extras: ['wreath'] },
			lifted: [
				['door 1', 3050],
				['door 2', 6200],
			],
		},
		{
			name: 'a visit above it is not lifted',
			of: two,
			choice: { leftOut: [], extras: ['garland'] },
			lifted: [['door 1', 4900]],
		},
		{
			name: 'a door that is not visited is not lifted',
			of: two,
			choice: { leftOut: [containerId(2)], extras: [] },
			lifted: [['door 1', 4900]],
		},
		{
			name: 'a visit for an extra alone is a visit',
			of: two,
			choice: { leftOut: [containerId(2)], extras: ['garland'] },
			lifted: [['door 1', 4900]],
		},
		{
			name: 'a visit that meets it to the cent',
			of: { ...two, rates: { ...defaultRates, minimumVisitCents: 12_600 } },
			choice: everything,
			lifted: [['door 2', 1300]],
		},
		{
			name: 'never under a discount',
			of: { ...two, agreement: { is: 'discount', percent: 4 } },
			choice: everything,
			lifted: [],
		},
		{
			name: 'never under a fixed season',
			of: { ...two, agreement: { is: 'fixed', cents: cents(9000), containers: [containerId(1)] } },
			choice: everything,
			lifted: [],
		},
	] as const)('$name', ({ of, choice, lifted }) => {
		expect(topUps(of, choice)).toEqual(lifted)
	})

	test('the line is labour, billed apart, at its door', () => {
		expect(asked(two).lines.at(-1)).toEqual({
			is: 'minimum visit',
			name: 'door 2',
			place: placeId(2),
			cents: 6200,
			split: { plants: 0, goods: 0, labour: 6200 },
			bill: 'apart',
		})
	})
})

describe('a quote', () => {
	test('sums its lines and its tax, per rate', () => {
		const whole = { ...defaultRates, tax: { ...defaultRates.tax, labour: 'taxed whole' } } as const
		// 175.00 at 6 % and 175.00 at 7.25 %
		expect(asked({ ...two, rates: whole })).toMatchObject({
			is: 'quote',
			currency: 'USD',
			ratesVersion: 3,
			netCents: 35_000,
			tax: [
				{ milliPercent: 6000, baseCents: 17_500, cents: 1050, bill: 'apart' },
				{ milliPercent: 7250, baseCents: 17_500, cents: 1269, bill: 'apart' },
			],
			totalCents: 37_319,
			due: [{ cents: 37_319, when: { is: 'after install', days: 30 } }],
		})
	})

	test('says the certificate of who is exempt, and the discount', () => {
		const payer = { kind: 'business', netDays: 15, exemptCertificate: 'EX-4410' } as const
		const of = asked({ ...two, payer, agreement: { is: 'discount', percent: 7.5 } })
		expect(of).toMatchObject({ exemptCertificate: 'EX-4410', discountPercent: 7.5, tax: [] })
		expect(of.totalCents).toBe(of.netCents)
	})

	test.each([
		{
			name: 'an unknown extra',
			choice: { leftOut: [], extras: ['tree'] },
			says: 'quote: "tree" is not in the price list',
		},
		{
			name: 'a container of another job',
			choice: { leftOut: [containerId(8)], extras: [] },
			says: `quote: "${containerId(8)}" is not in the price list`,
		},
	])('refuses $name', ({ choice, says }) => {
		expect(() => asked(two, choice)).toThrow(says)
	})
})
