import { z } from 'zod'

const money = z.int().min(0).max(100_000_000)
const decimal = (max: number) =>
	z
		.number()
		.min(0)
		.max(max)
		.refine((value) => Math.round(value * 1000) / 1000 === value, 'has more than three decimals')
const percent = decimal(100)
const perKind = <T extends z.ZodType>(of: T) =>
	z.strictObject({
		fresh: of,
		live: of,
		faux: of,
		ornament: of,
		light: of,
		mechanics: of,
	})

/**
 * The studio's prices and minutes. Money in cents, minutes in person-minutes, per cent as written (10 is 10 %).
 * Every default is common practice (no published source) and the studio's to change.
 */
export const ratesSchema = z.strictObject({
	lossPercent: perKind(percent),
	markup: perKind(decimal(20)),
	usesOfLife: z.strictObject({
		faux: z.int().min(1).max(50),
		ornament: z.int().min(1).max(50),
		light: z.int().min(1).max(50),
	}),
	visitMinutes: z.strictObject({ setUp: decimal(600), load: decimal(600) }),
	containerMinutes: z.strictObject({
		base: decimal(600),
		prep: decimal(600),
		waterAndTidy: decimal(600),
		spray: decimal(600),
		cleanOutPer1000Cm2: decimal(600),
		cleanOutAfterSummer: decimal(10),
		takeDown: decimal(600),
	}),
	pieceMinutes: z.strictObject({
		green: decimal(60),
		branch: decimal(60),
		accent: decimal(60),
		plant: decimal(60),
		string: decimal(60),
		clusterToMake: decimal(60),
		lentBack: decimal(60),
	}),
	designMinutes: z.strictObject({ new: decimal(600), repeat: decimal(600) }),
	crew: z.int().min(1).max(6),
	stopsADay: z.int().min(1).max(20),
	billedCentsPerHour: money,
	wageCentsPerHour: z.strictObject({ owner: money, helper: money }),
	burden: decimal(5),
	paidHours: z.int().min(1).max(8784),
	billableHours: z.int().min(1).max(8784),
	soil: z.strictObject({
		priceCentsPerLitre: money,
		costCentsPerLitre: money,
		topUpPercent: percent,
	}),
	disposal: z.strictObject({ priceCents: money, costCents: money }),
	presentationStepCents: z.int().min(1).max(100_000),
	minimumVisitCents: money,
	depositPercent: percent,
	marginFloorPercent: decimal(90),
	tax: z.strictObject({
		taxable: z.strictObject({
			plants: z.boolean(),
			goods: z.boolean(),
			labour: z.boolean(),
		}),
		labour: z.enum(['stated separately', 'taxed whole']),
		basis: z.enum(['invoice', 'line']),
	}),
})

export type Rates = z.infer<typeof ratesSchema>

export const defaultRates: Rates = {
	lossPercent: {
		fresh: 10,
		live: 5,
		faux: 5,
		ornament: 5,
		light: 0,
		mechanics: 0,
	},
	markup: {
		fresh: 2.2,
		live: 2,
		faux: 2,
		ornament: 2,
		light: 1.8,
		mechanics: 1.5,
	},
	usesOfLife: { faux: 4, ornament: 3, light: 3 },
	visitMinutes: { setUp: 20, load: 15 },
	containerMinutes: {
		base: 8,
		prep: 12,
		waterAndTidy: 3,
		spray: 2,
		cleanOutPer1000Cm2: 8,
		cleanOutAfterSummer: 1.5,
		takeDown: 10,
	},
	pieceMinutes: {
		green: 0.4,
		branch: 0.5,
		accent: 0.75,
		plant: 0.75,
		string: 6,
		clusterToMake: 4,
		lentBack: 1,
	},
	designMinutes: { new: 30, repeat: 15 },
	crew: 2,
	stopsADay: 3,
	billedCentsPerHour: 6000,
	wageCentsPerHour: { owner: 2600, helper: 1800 },
	burden: 1.3,
	paidHours: 2080,
	billableHours: 1500,
	soil: { priceCentsPerLitre: 60, costCentsPerLitre: 25, topUpPercent: 10 },
	disposal: { priceCents: 600, costCents: 250 },
	presentationStepCents: 500,
	minimumVisitCents: 17_500,
	depositPercent: 50,
	marginFloorPercent: 45,
	tax: {
		taxable: { plants: true, goods: true, labour: false },
		labour: 'stated separately',
		basis: 'invoice',
	},
}
