import { describe, expect, test } from 'vitest'
import { defaultRates, type Rates, ratesSchema } from '@/lib/pricing/rates'

// Common practice, no published source: the defaults as the trade of this site has them.
describe('the default rates', () => {
	test.each<{ name: string; of: (rates: Rates) => unknown; is: unknown }>([
		{ name: 'a tenth of what is fresh is lost', of: ({ lossPercent }) => lossPercent.fresh, is: 10 },
		{ name: 'a twentieth of what is live', of: ({ lossPercent }) => lossPercent.live, is: 5 },
		{ name: 'wind and fading', of: ({ lossPercent: { faux, ornament } }) => [faux, ornament], is: [5, 5] },
		{ name: 'no stake is lost', of: ({ lossPercent }) => lossPercent.mechanics, is: 0 },
		{
			name: 'markup',
			of: ({ markup }) => markup,
			is: { fresh: 2.2, live: 2, faux: 2, ornament: 2, light: 1.8, mechanics: 1.5 },
		},
		{ name: 'seasons outside', of: ({ usesOfLife }) => usesOfLife, is: { ornament: 3, faux: 4, light: 3 } },
		{ name: 'a visit', of: ({ visitMinutes }) => visitMinutes, is: { setUp: 20, load: 15 } },
		{
			name: 'a container',
			of: ({ containerMinutes: { base, prep, waterAndTidy, spray } }) => [base, prep, waterAndTidy, spray],
			is: [8, 12, 3, 2],
		},
		{
			name: 'the past season out',
			of: ({ containerMinutes: { cleanOutPer1000Cm2, cleanOutAfterSummer } }) => [
				cleanOutPer1000Cm2,
				cleanOutAfterSummer,
			],
			is: [8, 1.5],
		},
		{
			name: 'a piece',
			of: ({ pieceMinutes: { green, branch, accent, string, clusterToMake, lentBack } }) => [
				...[green, branch, accent, string],
				...[clusterToMake, lentBack],
			],
			is: [0.4, 0.5, 0.75, 6, 4, 1],
		},
		{ name: 'a design', of: ({ designMinutes }) => designMinutes, is: { new: 30, repeat: 15 } },
		{ name: 'a crew of two, three stops a day', of: ({ crew, stopsADay }) => [crew, stopsADay], is: [2, 3] },
		{ name: 'a tenth of the soil in spring', of: ({ soil }) => soil.topUpPercent, is: 10 },
		{ name: 'shown in steps of 5.00', of: ({ presentationStepCents }) => presentationStepCents, is: 500 },
		{ name: 'no visit under 175.00', of: ({ minimumVisitCents }) => minimumVisitCents, is: 17_500 },
		{ name: 'half as a deposit', of: ({ depositPercent }) => depositPercent, is: 50 },
		{ name: 'the floor of the margin', of: ({ marginFloorPercent }) => marginFloorPercent, is: 45 },
	])('$name', ({ of, is }) => {
		expect(of(defaultRates)).toEqual(is)
	})

	test('are rates', () => {
		expect(ratesSchema.parse(defaultRates)).toEqual(defaultRates)
	})
})

describe('rates that are refused', () => {
	test.each<{ name: string; rates: unknown; says: string }>([
		{
			name: 'finer than a thousandth',
			rates: { ...defaultRates, burden: 1.2345 },
			says: 'has more than three decimals',
		},
		{
			name: 'more than everything as a deposit',
			rates: { ...defaultRates, depositPercent: 101 },
			says: 'depositPercent',
		},
		{ name: 'nobody', rates: { ...defaultRates, crew: 0 }, says: 'crew' },
		{ name: 'no billable hour', rates: { ...defaultRates, billableHours: 0 }, says: 'billableHours' },
		{ name: 'a broken cent', rates: { ...defaultRates, billedCentsPerHour: 6000.5 }, says: 'billedCentsPerHour' },
		{ name: 'a negative price', rates: { ...defaultRates, minimumVisitCents: -1 }, says: 'minimumVisitCents' },
		{ name: 'a rate that nobody knows', rates: { ...defaultRates, surcharge: 3 }, says: 'surcharge' },
		{
			name: 'a thing that serves no season',
			rates: { ...defaultRates, usesOfLife: { faux: 4, ornament: 0, light: 3 } },
			says: 'ornament',
		},
	])('$name', ({ rates, says }) => {
		expect(() => ratesSchema.parse(rates)).toThrow(says)
	})
})
