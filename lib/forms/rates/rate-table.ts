/** One number of the rates: where it stands in them, what it is called, in what, and between which bounds. */
export type RateField = {
	readonly at: string
	readonly label: string
	readonly is: 'money' | 'number' | 'whole'
	readonly unit: string
	readonly from: number
	readonly to: number
}
export type RateGroup = { readonly title: string; readonly says: string; readonly fields: readonly RateField[] }

const kinds = [
	['fresh', 'Fresh greens and branches'],
	['live', 'Live plants'],
	['faux', 'Faux'],
	['ornament', 'Ornaments'],
	['light', 'Lights'],
	['mechanics', 'Mechanics'],
] as const

const percent = (at: string, label: string, to = 100): RateField => ({
	at,
	label,
	is: 'number',
	unit: '%',
	from: 0,
	to,
})
const times = (at: string, label: string, to: number): RateField => ({
	at,
	label,
	is: 'number',
	unit: '×',
	from: 0,
	to,
})
const minutes = (at: string, label: string, to = 600): RateField => ({
	at,
	label,
	is: 'number',
	unit: 'min',
	from: 0,
	to,
})
const whole = (at: string, label: string, unit: string, to: number): RateField => ({
	at,
	label,
	is: 'whole',
	unit,
	from: 1,
	to,
})
const money = (at: string, label: string, unit: string): RateField => ({
	at,
	label,
	is: 'money',
	unit,
	from: 0,
	to: 100_000,
})

/** Every number of the rates, in the order in which a price is made. */
export const rateTable: readonly RateGroup[] = [
	{
		title: 'Materials: what is lost',
		says: 'Bought beyond the count, for what breaks, dries or fades.',
		fields: kinds.map(([kind, label]) => percent(`lossPercent.${kind}`, label)),
	},
	{
		title: 'Materials: from cost to price',
		says: 'A line’s price is its cost times this.',
		fields: kinds.map(([kind, label]) => times(`markup.${kind}`, label, 20)),
	},
	{
		title: 'What is lent',
		says: 'Seasons that a thing stands outside before it has cost you nothing more.',
		fields: [
			whole('usesOfLife.ornament', 'Ornaments', 'seasons', 50),
			whole('usesOfLife.faux', 'Faux', 'seasons', 50),
			whole('usesOfLife.light', 'Lights', 'seasons', 50),
		],
	},
	{
		title: 'Minutes of a visit and of a design',
		says: 'Person-minutes: two people for ten minutes are twenty.',
		fields: [
			minutes('visitMinutes.setUp', 'Setting up'),
			minutes('visitMinutes.load', 'Loading and unloading'),
			minutes('designMinutes.new', 'A new design'),
			minutes('designMinutes.repeat', 'A design much like the last'),
		],
	},
	{
		title: 'Minutes of a container',
		says: 'Person-minutes for each container of a visit.',
		fields: [
			minutes('containerMinutes.base', 'To begin with'),
			minutes('containerMinutes.prep', 'Preparing at the studio'),
			minutes('containerMinutes.waterAndTidy', 'Watering and tidying'),
			minutes('containerMinutes.spray', 'Spraying'),
			minutes('containerMinutes.cleanOutPer1000Cm2', 'Cleaning out, per 1,000 cm² of opening'),
			times('containerMinutes.cleanOutAfterSummer', 'Cleaning out after summer', 10),
			minutes('containerMinutes.takeDown', 'Taking down'),
		],
	},
	{
		title: 'Minutes of a piece',
		says: 'Person-minutes for each piece that goes in.',
		fields: [
			minutes('pieceMinutes.green', 'A tip of greens', 60),
			minutes('pieceMinutes.branch', 'A branch', 60),
			minutes('pieceMinutes.accent', 'An accent', 60),
			minutes('pieceMinutes.plant', 'A plant', 60),
			minutes('pieceMinutes.string', 'A string of lights', 60),
			minutes('pieceMinutes.clusterToMake', 'Making a cluster', 60),
			minutes('pieceMinutes.lentBack', 'A lent thing back, cleaned and stored', 60),
		],
	},
	{
		title: 'Hours and wages',
		says: 'What an hour is billed at, and what it costs: wage × burden × hours paid ÷ hours billed.',
		fields: [
			money('billedCentsPerHour', 'Billed', 'an hour'),
			money('wageCentsPerHour.owner', 'Your own wage', 'an hour'),
			money('wageCentsPerHour.helper', 'The helper’s wage', 'an hour'),
			times('burden', 'Burden: taxes and insurance on a wage', 5),
			whole('paidHours', 'Hours paid in a year', 'hours', 8784),
			whole('billableHours', 'Hours of them that can be billed', 'hours', 8784),
			whole('crew', 'Crew', 'people', 6),
			whole('stopsADay', 'Stops that share a drive', 'stops', 20),
		],
	},
	{
		title: 'Soil and disposal',
		says: 'Soil by the litre; a top-up in spring is a share of the whole.',
		fields: [
			money('soil.priceCentsPerLitre', 'Soil, price', 'a litre'),
			money('soil.costCentsPerLitre', 'Soil, cost', 'a litre'),
			percent('soil.topUpPercent', 'Top-up in spring'),
			money('disposal.priceCents', 'Disposal, price', 'a container'),
			money('disposal.costCents', 'Disposal, cost', 'a container'),
		],
	},
	{
		title: 'The price that is shown',
		says: 'Each container is rounded up to the step; a visit comes to at least the minimum.',
		fields: [
			{ ...money('presentationStepCents', 'Rounded up to whole', ''), from: 0.01, to: 1000 },
			money('minimumVisitCents', 'Least for a visit', ''),
			percent('depositPercent', 'Deposit of a household'),
			percent('marginFloorPercent', 'Least margin before overhead', 90),
		],
	},
]

export const rateTicks = [
	{ at: 'tax.taxable.plants', label: 'Plants and greens are taxed' },
	{ at: 'tax.taxable.goods', label: 'Goods are taxed' },
	{ at: 'tax.taxable.labour', label: 'Labour is taxed' },
] as const

export const rateChoices = [
	{
		at: 'tax.labour',
		label: 'Labour on a taxed job',
		choices: ['stated separately', 'taxed whole'],
	},
	{ at: 'tax.basis', label: 'Tax is rounded by the', choices: ['invoice', 'line'] },
] as const

export const rateFields: readonly RateField[] = rateTable.flatMap(({ fields }) => fields)
