import { describe, expect, test } from 'vitest'
import type { Part, PartOf } from '@/lib/pricing/price-list'
import type { Quote, QuoteLine } from '@/lib/pricing/quote/quote'
import { priceView } from '@/lib/proposal/offer/price-view'
import { cents, zero } from '@/lib/units/cents'
import { containerId, money, offerOf, placeId } from '../sample'

const split = { plants: zero, goods: zero, labour: zero }
const rest = (name: string, place: number, amount: number) => ({
	...{ name, place: placeId(place), cents: cents(amount), split },
	bill: 'apart' as const,
})
const part = (of: PartOf, name: string, place: number, amount: number): Part => ({
	...of,
	...rest(name, place, amount),
})
const minimum = (place: number, amount: number): QuoteLine => ({ is: 'minimum visit', ...rest('door', place, amount) })

const plain: Quote = {
	is: 'quote',
	currency: 'USD',
	ratesVersion: 7,
	lines: [],
	discountPercent: 0,
	netCents: zero,
	tax: [],
	exemptCertificate: null,
	totalCents: cents(51_905),
	due: [{ cents: cents(51_905), when: { is: 'at install' } }],
}
const two = offerOf()
const one = { ...two, places: two.places.slice(0, 1) }
const view = (more: Partial<Quote>, of = two) => priceView(of, { ...plain, ...more }, money)
const rows = (lines: QuoteLine[], of = two) => view({ lines }, of).rows.map(({ label, amount }) => [label, amount])

describe('the rows of a price', () => {
	test('containers in the order of the offer, then what comes with the visit', () => {
		const lines = [
			part({ is: 'travel' }, 'Front door', 1, 5500),
			part({ is: 'soil', container: containerId(3) }, 'Long box', 1, 1380),
			part({ is: 'container', container: containerId(2) }, 'Right urn', 1, 19_500),
			part({ is: 'design' }, 'Design', 1, 3000),
			part({ is: 'take-down', container: containerId(1) }, 'Left urn', 1, 1000),
			part({ is: 'extra', extra: 'wreath' }, 'Wreath', 1, 4550),
			part({ is: 'container', container: containerId(1) }, 'Left urn', 1, 21_000),
			minimum(1, 777),
		]
		expect(rows(lines, one)).toEqual([
			['Left urn', '$210.00'],
			['Right urn', '$195.00'],
			['Wreath', '$45.50'],
			['Design', '$30.00'],
			['Soil', '$13.80'],
			['Taking out, delivery and set-up', '$55.00'],
			['Taking down at the end', '$10.00'],
			['Up to the least price of a visit', '$7.77'],
		])
	})

	test('what reads as one to a client is added up', () => {
		const lines = [
			part({ is: 'travel' }, 'Front door', 1, 5500),
			part({ is: 'disposal', container: containerId(1) }, 'Left urn', 1, 600),
			part({ is: 'disposal', container: containerId(2) }, 'Right urn', 1, 601),
			part({ is: 'soil', container: containerId(1) }, 'Left urn', 1, 12),
			part({ is: 'soil', container: containerId(2) }, 'Right urn', 1, 23),
			part({ is: 'take-down', container: containerId(1) }, 'Left urn', 1, 1001),
			part({ is: 'take-down', container: containerId(2) }, 'Right urn', 1, 1002),
		]
		expect(rows(lines, one)).toEqual([
			['Soil', '$0.35'],
			['Taking out, delivery and set-up', '$67.01'],
			['Taking down at the end', '$20.03'],
		])
	})

	test('door by door, when there are several', () => {
		const lines = [
			part({ is: 'travel' }, 'Side door', 2, 6400),
			part({ is: 'disposal', container: containerId(3) }, 'Long box', 2, 602),
			part({ is: 'travel' }, 'Front door', 1, 5500),
			minimum(2, 911),
			part({ is: 'soil', container: containerId(3) }, 'Long box', 2, 808),
		]
		expect(rows(lines)).toEqual([
			['Soil, Side door', '$8.08'],
			['Taking out, delivery and set-up, Side door', '$70.02'],
			['Taking out, delivery and set-up, Front door', '$55.00'],
			['Up to the least price of a visit, Side door', '$9.11'],
		])
	})

	test('containers and extras of the same name are told apart, and never added up', () => {
		const named = (name: string) => ({
			...two,
			containers: two.containers.map((each) => ({ ...each, name })),
			extras: two.extras.map((each) => ({ ...each, name })),
		})
		const lines = [
			part({ is: 'container', container: containerId(1) }, 'Urn', 1, 21_000),
			part({ is: 'container', container: containerId(3) }, 'Urn', 2, 19_500),
			part({ is: 'extra', extra: 'wreath' }, 'Urn', 1, 4550),
			part({ is: 'extra', extra: 'lights' }, 'Urn', 2, 3100),
		]
		expect(rows(lines, named('Urn'))).toEqual([
			['Urn, Front door', '$210.00'],
			['Urn, Side door', '$195.00'],
			['Extra “Urn”, Front door', '$45.50'],
			['Extra “Urn”, Side door', '$31.00'],
		])
	})

	test('two places of the same name are told apart by their addresses', () => {
		const places = two.places.map((each, n) => ({ ...each, name: 'Shop', address: `${n + 1} Quay Row` }))
		const lines = [part({ is: 'travel' }, 'Shop', 1, 5500), part({ is: 'travel' }, 'Shop', 2, 6400)]
		expect(rows(lines, { ...two, places })).toEqual([
			['Taking out, delivery and set-up, Shop, 1 Quay Row', '$55.00'],
			['Taking out, delivery and set-up, Shop, 2 Quay Row', '$64.00'],
		])
	})

	test('a season at a fixed price comes first, its supplement next', () => {
		const lines = [
			part({ is: 'extra', extra: 'lights' }, 'String of lights', 2, 3100),
			part({ is: 'supplement' }, 'Supplement', 1, 4122),
			part({ is: 'supplement' }, 'Supplement', 2, 3379),
			part({ is: 'season' }, 'Season', 1, 52_207),
			part({ is: 'season' }, 'Season', 2, 42_793),
		]
		expect(rows(lines)).toEqual([
			['The season, by your agreement, Front door', '$522.07'],
			['The season, by your agreement, Side door', '$427.93'],
			['Supplement for the palette', '$75.01'],
			['String of lights', '$31.00'],
		])
	})
})

describe('what stands under them', () => {
	const taxes = (...tax: Quote['tax']) => view({ tax }).taxes.map(({ label, amount }) => [label, amount])
	const season = { milliPercent: 6250, baseCents: cents(40_000), cents: cents(2500), bill: 'agreement' } as const
	const rest = { milliPercent: 6250, baseCents: cents(9600), cents: cents(600), bill: 'apart' } as const

	test('tax by its rate', () => {
		expect(taxes(rest, { ...rest, milliPercent: 7000, cents: cents(700) })).toEqual([
			['Sales tax, 6.25 % of $96.00', '$6.00'],
			['Sales tax, 7 % of $96.00', '$7.00'],
		])
		expect(taxes(season)).toEqual([['Sales tax, 6.25 % of $400.00', '$25.00']])
	})

	test('tax of the agreement’s bill and of the one beside it, at one rate', () => {
		expect(taxes(season, rest)).toEqual([
			['Sales tax on the season, 6.25 % of $400.00', '$25.00'],
			['Sales tax on the rest, 6.25 % of $96.00', '$6.00'],
		])
		expect(new Set(view({ tax: [season, rest] }).taxes.map(({ key }) => key)).size).toBe(2)
	})

	test.each<{ name: string; more: Partial<Quote>; notes: string[] }>([
		{ name: 'nothing to say', more: {}, notes: [] },
		{
			name: 'a discount',
			more: { discountPercent: 12.5 },
			notes: ['The prices of containers and extras are after your agreement’s discount of 12.5 %.'],
		},
		{
			name: 'a certificate',
			more: { exemptCertificate: 'EX-4410' },
			notes: ['No sales tax: exempt, certificate EX-4410.'],
		},
		{
			name: 'both',
			more: { discountPercent: 5, exemptCertificate: 'EX-9' },
			notes: [
				'The prices of containers and extras are after your agreement’s discount of 5 %.',
				'No sales tax: exempt, certificate EX-9.',
			],
		},
	])('$name', ({ more, notes }) => {
		expect(view(more).notes).toEqual(notes)
	})

	test('the total, and when it is due', () => {
		expect(view({})).toMatchObject({ total: '$519.05', due: '$519.05 when it is in' })
	})
})
