import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { containerWork, driveWork, extraWork, minutesOf, stopWork, takeDownWork } from '@/lib/pricing/cost/minutes'
import type { JobContainer, JobLine } from '@/lib/pricing/job'
import { defaultRates } from '@/lib/pricing/rates'
import type { Quarter } from '@/lib/season/season'
import { jobs, runs } from '../arbitrary'
import { bare, extra, line, visit } from '../sample'

const work = (of: JobContainer, quarter: Quarter = 'winter') =>
	Object.fromEntries(containerWork(of, { quarter, rates: defaultRates }).map(({ what, minutes }) => [what, minutes]))

/** Minutes of the one line of a container. */
const lineMinutes = (of: JobLine) => work(bare(1, { lines: [of] }))[of.name]

describe('minutes at a container', () => {
	test('base, prep, water and tidy, and the past season out', () => {
		expect(work(bare(1))).toEqual({ base: 8, 'studio prep': 12, 'water and tidy': 3, 'past season out': 8 })
	})

	test.each([
		{ name: 'by its opening', of: bare(1, { openingCm2: 1642 }), quarter: 'winter', out: 13.136 },
		{ name: 'half as long again after summer', of: bare(1, { openingCm2: 1642 }), quarter: 'autumn', out: 19.704 },
		{ name: 'not in spring', of: bare(1, { openingCm2: 2500 }), quarter: 'spring', out: 20 },
		{ name: 'not before summer', of: bare(1, { openingCm2: 900 }), quarter: 'summer', out: 7.2 },
		{
			name: 'an opening that is no whole number',
			of: bare(1, { openingCm2: 1641.732 }),
			quarter: 'winter',
			out: 13.134,
		},
		{ name: 'nothing in a new one', of: bare(1, { isNew: true }), quarter: 'autumn', out: undefined },
	] as const)('clean-out: $name', ({ of, quarter, out }) => {
		expect(work(of, quarter)['past season out']).toBe(out)
	})

	test.each([
		{ name: 'cut evergreens', piece: 'green', kind: 'fresh', minutes: 2 },
		{ name: 'not branches', piece: 'branch', kind: 'fresh', minutes: undefined },
		{ name: 'not faux greens', piece: 'green', kind: 'faux', minutes: undefined },
	] as const)('spray: $name', ({ piece, kind, minutes }) => {
		const of = bare(1, { lines: [line('tips', kind, piece, 5, 800, 10), line('more tips', kind, piece, 6, 900, 11)] })
		expect(work(of).spray).toBe(minutes)
	})

	test.each([
		{ name: 'greens', of: line('fir', 'fresh', 'green', 20, 1275, 25), minutes: 8 },
		{ name: 'branches', of: line('birch', 'fresh', 'branch', 12, 1840, 10), minutes: 6 },
		{ name: 'accents', of: line('cones', 'fresh', 'accent', 5, 640, 12), minutes: 3.75 },
		{ name: 'plants', of: line('pansy', 'live', 'plant', 7, 465, 1), minutes: 5.25 },
		{ name: 'strings of lights', of: line('lights', 'light', 'string', 2, 2150, 1), minutes: 12 },
		{
			name: 'strings lent, back and stored',
			of: line('lights', 'light', 'string', 2, 2150, 1, { holding: 'lent' }),
			minutes: 14,
		},
		{
			name: 'clusters made, each set as one accent',
			of: line('globes', 'ornament', 'cluster to make', 3, 5400, 6),
			minutes: 14.25,
		},
		{ name: 'clusters from storage', of: line('globes', 'ornament', 'cluster kept', 4, 5400, 6), minutes: 3 },
		{
			name: 'clusters from storage, lent again',
			of: line('globes', 'ornament', 'cluster kept', 4, 5400, 6, { holding: 'lent' }),
			minutes: 7,
		},
		{
			name: 'the client’s own counts in full',
			of: line('bow', 'faux', 'accent', 9, 1500, 1, { holding: 'own' }),
			minutes: 6.75,
		},
		{
			name: 'greens by weight, 45 tips to the kilogram',
			of: line('cedar', 'fresh', 'green', 0.8, 990, 1, { piecesPerUnit: 45 }),
			minutes: 14.4,
		},
		{ name: 'stakes take no minutes', of: line('stakes', 'mechanics', 'none', 6, 999, 25), minutes: undefined },
	] as const)('pieces: $name', ({ of, minutes }) => {
		expect(lineMinutes(of)).toBe(minutes)
	})
})

describe('minutes of a visit and beside it', () => {
	test.each([
		{ name: 'there and back for two, shared by three stops', driveMinutes: 15, crew: 2, stopsADay: 3, minutes: 20 },
		{ name: 'to the thousandth', driveMinutes: 14, crew: 2, stopsADay: 3, minutes: 18.667 },
		{ name: 'alone, two stops', driveMinutes: 11, crew: 1, stopsADay: 2, minutes: 11 },
		{ name: 'at the door', driveMinutes: 0, crew: 3, stopsADay: 4, minutes: 0 },
	])('drive: $name', ({ driveMinutes, crew, stopsADay, minutes }) => {
		expect(driveWork(visit(1, { driveMinutes }), { ...defaultRates, crew, stopsADay })).toEqual({
			what: 'drive',
			minutes,
			how: `2 × ${driveMinutes} min × crew of ${crew} ÷ ${stopsADay} stops`,
		})
	})

	test('set-up and loading once a stop', () => {
		expect(minutesOf(stopWork(defaultRates))).toBe(35)
	})

	test('take-down, and an extra with pieces of its own', () => {
		const wreath = extra('wreath', {
			minutes: 9,
			lines: [line('bow', 'faux', 'accent', 4, 1500, 1, { holding: 'lent' })],
		})
		expect(takeDownWork(bare(6), defaultRates)).toEqual({ what: 'pot 6 taken down', minutes: 10, how: '10 min' })
		expect(extraWork(wreath, defaultRates).map(({ minutes }) => minutes)).toEqual([9, 7])
	})

	test('how the minutes came about, word for word', () => {
		const of = bare(1, { openingCm2: 1642, lines: [line('fir', 'fresh', 'green', 20, 1275, 25)] })
		expect(containerWork(of, { quarter: 'autumn', rates: defaultRates }).map(({ how }) => how)).toEqual([
			...['8 min', '12 min', '3 min', '2 min'],
			'1642 cm² × 8 min ÷ 1000 × 1.5 after summer',
			'20 × 0.4 min',
		])
	})
})

test('each line’s minutes are those of the line alone: nothing is counted at two places', () => {
	fc.assert(
		fc.property(jobs, ({ containers, quarter, rates }) => {
			for (const each of containers) {
				const of = (more: Partial<JobContainer>) => minutesOf(containerWork({ ...each, ...more }, { quarter, rates }))
				const sprays = each.lines.filter(({ kind, piece }) => kind === 'fresh' && piece === 'green').length
				const apart = each.lines.reduce((all, one) => all + of({ lines: [one] }) - of({ lines: [] }), of({ lines: [] }))
				const twice = Math.max(0, sprays - 1) * rates.containerMinutes.spray
				expect(of({})).toBeCloseTo(apart - twice, 6)
			}
		}),
		runs,
	)
})
