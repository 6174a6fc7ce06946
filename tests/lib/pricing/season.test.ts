import { describe, expect, test } from 'vitest'
import type { Job } from '@/lib/pricing/job'
import { price } from '@/lib/pricing/price'
import { costing } from '@/lib/pricing/quote/costing'
import { quote } from '@/lib/pricing/quote/quote'
import { cents } from '@/lib/units/cents'
import { bare, containerId, extra, job, placeId, visit, words } from './sample'

/** Two doors under a fixed season, a third pot that it does not name, a supplement, and two extras. */
const season = job({
	agreement: { is: 'fixed', cents: cents(95_000), containers: [containerId(1), containerId(2)] },
	supplementCents: cents(7501),
	visits: [visit(1), visit(2, { taxMilliPercent: 7250 }), visit(3, { driveMinutes: 24, takeDown: true })],
	containers: [
		bare(1),
		bare(2, { place: placeId(2), openingCm2: 2000 }),
		bare(3, { place: placeId(3), isNew: true, soilL: 20 }),
	],
	extras: [extra('wreath', { minutes: 12.5 }), extra('garland', { place: placeId(3), minutes: 17.25 })],
})

const asked = (of: Job, extras: string[] = [], leftOut = [containerId(3)]) =>
	quote(price(of, words).list, { leftOut, extras })
const billed = (of: ReturnType<typeof quote>) =>
	of.lines.map(({ is, name, bill, cents: amount }) => [is, name, bill, amount])

describe('a season priced fixed by the agreement', () => {
	test('covers its containers, their travel and clean-out, and the design; the supplement is billed apart', () => {
		// Door 1 would cost 31.00 + 6.00 + 55.00 + design 30.00, door 2 39.00 + 6.00 + 55.00: as 122 to 100.
		expect(billed(asked(season))).toEqual([
			['season', 'Season', 'agreement', 52_207],
			['season', 'Season', 'agreement', 42_793],
			['supplement', 'Supplement', 'apart', 4122],
			['supplement', 'Supplement', 'apart', 3379],
		])
	})

	test('extras are added, each where it hangs', () => {
		expect(billed(asked(season, ['wreath'])).at(-1)).toEqual(['supplement', 'Supplement', 'apart', 3379])
		expect(billed(asked(season, ['wreath']))).toContainEqual(['extra', 'extra wreath', 'apart', 1250])
		expect(asked(season, ['wreath']).netCents - asked(season).netCents).toBe(1250)
	})

	test('a container that it does not name is a line of its own with its own charges, and billed apart', () => {
		const all = billed(asked(season, [], []))
		expect(all.slice(0, -4)).toEqual([
			['container', 'pot 3', 'apart', 2500],
			['soil', 'pot 3', 'apart', 1200],
			['take-down', 'pot 3', 'apart', 1000],
			['travel', 'door 3', 'apart', 6700],
		])
		expect(all.slice(-4)).toEqual(billed(asked(season)))
	})

	test('what the agreement asks for is its price and the tax on that, whatever is added', () => {
		const taxed = { ...season.rates.tax, labour: 'taxed whole' } as const
		const of = { ...season, rates: { ...season.rates, tax: taxed } }
		const due = asked(of, ['wreath', 'garland'], []).due
		// 522.07 at 6 % and 427.93 at 7.25 %
		expect(due[0]).toEqual({ cents: 95_000 + 3132 + 3102, when: { is: 'by agreement' } })
		expect(due).toHaveLength(2)
	})

	test('no discount, no minimum and no deposit', () => {
		const home = { kind: 'household', netDays: 15, exemptCertificate: null } as const
		const of = asked({ ...season, payer: home, containers: season.containers }, ['wreath'])
		expect(of.discountPercent).toBe(0)
		expect(of.lines.some(({ is }) => is === 'minimum visit')).toBe(false)
		expect(of.due.map(({ when }) => when)).toEqual([{ is: 'by agreement' }, { is: 'at install' }])
	})

	test('the costing shows what the fixed price leaves', () => {
		const { list, costs } = price(season, words, [containerId(3)])
		const of = costing(list, costs, { leftOut: [containerId(3)], extras: [] })
		// 31 + 39 + 55 + 55 minutes of the crew in four parts, 30 of the owner, and twice the dump
		expect(of).toMatchObject({
			netCents: 102_501,
			minutes: 210,
			labourCents: 14_240,
			materialCents: 500,
			costCents: 14_740,
		})
		expect(of.marginPercent).toBe(85.6)
	})

	test('a supplement of nothing, or of another kind of agreement, is no line', () => {
		const plain: Job = { ...season, supplementCents: cents(0) }
		const quoted: Job = { ...season, agreement: { is: 'discount', percent: 10 } }
		for (const of of [plain, quoted]) expect(asked(of).lines.some(({ is }) => is === 'supplement')).toBe(false)
	})

	test('a season at no price is no line, and nothing is asked by the agreement', () => {
		const free: Job = {
			...season,
			agreement: { is: 'fixed', cents: cents(0), containers: [containerId(1), containerId(2)] },
		}
		expect(billed(asked(free))).toEqual([
			['supplement', 'Supplement', 'apart', 4122],
			['supplement', 'Supplement', 'apart', 3379],
		])
		expect(asked(free).due.map(({ when }) => when.is)).toEqual(['after install'])
	})

	test('a season that names no container of this job is still paid whole, at the first door', () => {
		const other: Job = { ...season, agreement: { is: 'fixed', cents: cents(95_000), containers: [containerId(9)] } }
		const parts = price(other, words).list.parts.filter(({ is }) => is === 'season')
		expect(parts).toMatchObject([{ place: placeId(1), cents: 95_000, bill: 'agreement' }])
	})

	test('a container that it names cannot be left out: the price is whole', () => {
		expect(() => asked(season, [], [containerId(1)])).toThrow(`quote: "${containerId(1)}" is not in the price list`)
	})
})
