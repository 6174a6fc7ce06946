import fc from 'fast-check'
import type { Agreement, Job, JobContainer, JobExtra, JobLine } from '@/lib/pricing/job'
import type { Choice } from '@/lib/pricing/quote/choice'
import { defaultRates, type Rates } from '@/lib/pricing/rates'
import { canBeLent, holdings, kinds, pieces, units } from '@/lib/recipe/material'
import { cents } from '@/lib/units/cents'
import { containerId, placeId } from './sample'

/** Random well-formed jobs, and choices that a client could make of them. */
export const runs = { numRuns: 300 }

const thousandth = (max: number) => fc.integer({ min: 0, max: max * 1000 }).map((n) => n / 1000)
const money = (max: number) => fc.integer({ min: 0, max }).map(cents)

export const lines: fc.Arbitrary<JobLine> = fc
	.record({
		name: fc.constantFrom('birch', 'cedar', 'globes', 'ivy'),
		unit: fc.constantFrom(...units),
		kind: fc.constantFrom(...kinds),
		piece: fc.constantFrom(...pieces),
		piecesPerUnit: fc.oneof(fc.constant(1), fc.integer({ min: 1, max: 40 }), thousandth(9)),
		count: fc.oneof(fc.integer({ min: 0, max: 40 }), thousandth(6)),
		holding: fc.constantFrom(...holdings),
		pack: fc.record({
			size: fc.oneof(
				fc.integer({ min: 1, max: 50 }),
				fc.integer({ min: 1, max: 9000 }).map((n) => n / 1000),
			),
			cents: money(20_000),
			freightPercent: fc.constantFrom(0, 8, 12.5, 0.125),
		}),
		usesBefore: fc.integer({ min: 0, max: 6 }),
		onlyHere: fc.boolean(),
	})
	.map((line) => (line.holding === 'lent' && !canBeLent(line.kind) ? { ...line, holding: 'sold' } : line))

const numbers = (length: number) =>
	fc.uniqueArray(fc.integer({ min: 1, max: 999 }), { minLength: length, maxLength: length })

const uses = fc.integer({ min: 1, max: 5 })

export const rates: fc.Arbitrary<Rates> = fc
	.record({
		lossPercent: fc.record({ fresh: fc.constantFrom(0, 10, 12.345), faux: fc.constantFrom(0, 5, 100) }),
		markup: fc.record({ fresh: thousandth(3), live: fc.constantFrom(2, 1.995), ornament: thousandth(4) }),
		usesOfLife: fc.record({ faux: uses, ornament: uses, light: uses }),
		pieceMinutes: fc.record({ green: thousandth(2), lentBack: fc.constantFrom(0, 1, 0.333) }),
		crew: fc.integer({ min: 1, max: 4 }),
		stopsADay: fc.integer({ min: 1, max: 5 }),
		billedCentsPerHour: fc.constantFrom(6000, 6173, 0),
		burden: fc.constantFrom(1.3, 1.275),
		soil: fc.record({
			priceCentsPerLitre: fc.constantFrom(60, 47),
			costCentsPerLitre: fc.constantFrom(25, 19),
			topUpPercent: fc.constantFrom(10, 12.5, 0),
		}),
		presentationStepCents: fc.constantFrom(1, 100, 500, 995),
		minimumVisitCents: fc.constantFrom(0, 17_500, 60_000),
		depositPercent: fc.constantFrom(0, 33.333, 50, 100),
		tax: fc.record({
			taxable: fc.record({ plants: fc.boolean(), goods: fc.boolean(), labour: fc.boolean() }),
			labour: fc.constantFrom('stated separately', 'taxed whole'),
			basis: fc.constantFrom('invoice', 'line'),
		}),
	})
	.map(({ lossPercent, markup, pieceMinutes, ...rest }) => ({
		...defaultRates,
		...rest,
		lossPercent: { ...defaultRates.lossPercent, ...lossPercent },
		markup: { ...defaultRates.markup, ...markup },
		pieceMinutes: { ...defaultRates.pieceMinutes, ...pieceMinutes },
	}))

type Unplaced<T> = Omit<T, 'id' | 'key' | 'place' | 'name'>

const pots: fc.Arbitrary<Unplaced<JobContainer>> = fc.record({
	openingCm2: fc.oneof(fc.integer({ min: 0, max: 6000 }), thousandth(6000)),
	soilL: fc.oneof(fc.integer({ min: 0, max: 200 }), thousandth(200)),
	isNew: fc.boolean(),
	lines: fc.array(lines, { maxLength: 4 }),
})

const extras: fc.Arbitrary<Unplaced<JobExtra>> = fc.record({
	minutes: thousandth(40),
	lines: fc.array(lines, { maxLength: 2 }),
})

const stops = fc.record({
	taxMilliPercent: fc.constantFrom(0, 6000, 7250, 7125, 10_250),
	driveMinutes: fc.oneof(fc.integer({ min: 0, max: 60 }), thousandth(60)),
	zoneCents: fc.option(money(9000)),
	takeDown: fc.boolean(),
})

type Terms = {
	readonly is: Agreement['is']
	readonly percent: number
	readonly amount: number
	readonly named: boolean[]
}

const terms: fc.Arbitrary<Terms> = fc.record({
	is: fc.constantFrom('none', 'discount', 'fixed'),
	percent: fc.oneof(fc.constantFrom(0, 7.5, 33.333, 100), thousandth(100)),
	amount: fc.integer({ min: 0, max: 200_000 }),
	named: fc.array(fc.boolean(), { minLength: 5, maxLength: 5 }),
})

function agreed({ is, percent, amount, named }: Terms, containers: readonly JobContainer[]): Agreement {
	if (is === 'none') return { is }
	if (is === 'discount') return { is, percent }
	return { is, cents: cents(amount), containers: containers.filter((_, n) => named[n]).map(({ id }) => id) }
}

const ids = fc.record({ pots: numbers(5), doors: numbers(3), keys: numbers(3) })

/** One to three places, one to five containers, none to three extras; a visit for each place that one of them names. */
export const jobs: fc.Arbitrary<Job> = fc
	.record({
		ids,
		rates,
		terms,
		quarter: fc.constantFrom('spring', 'summer', 'autumn', 'winter'),
		payer: fc.record({
			kind: fc.constantFrom('business', 'household'),
			netDays: fc.constantFrom(15, 30),
			exemptCertificate: fc.option(fc.constant('EX-4410'), { freq: 4 }),
		}),
		supplementCents: money(8000),
		design: fc.constantFrom('new', 'repeat'),
		stops: fc.array(stops, { minLength: 3, maxLength: 3 }),
		pots: fc.array(fc.tuple(pots, fc.nat(2)), { minLength: 1, maxLength: 5 }),
		extras: fc.array(fc.tuple(extras, fc.nat(2)), { maxLength: 3 }),
	})
	.map(({ ids: { pots: potIds, doors, keys }, ...drawn }): Job => {
		const door = (at: number) => placeId(doors[at] ?? at)
		const containers = drawn.pots.map(([pot, at], n) => ({
			...pot,
			id: containerId(potIds[n] ?? n),
			name: `pot ${n}`,
			place: door(at),
		}))
		const added = drawn.extras.map(([extra, at], n) => ({
			...extra,
			key: `x${keys[n]}`,
			name: `extra ${n}`,
			place: door(at),
		}))
		const named = new Set([...containers, ...added].map(({ place }) => place))
		const visits = drawn.stops.map((stop, at) => ({ ...stop, name: `door ${at}`, place: door(at) }))
		const { rates, quarter, payer, supplementCents, design } = drawn
		return {
			...{ currency: 'USD', ratesVersion: 7, rates, quarter, payer, supplementCents, design },
			agreement: agreed(drawn.terms, containers),
			visits: visits.filter(({ place }) => named.has(place)),
			containers,
			extras: added,
		}
	})

/** Containers that the agreement's fixed price names cannot be left out: it is paid whole. */
const mayLeave = ({ agreement, containers }: Job) =>
	containers.map(({ id }) => id).filter((id) => agreement.is !== 'fixed' || !agreement.containers.includes(id))

const picks = fc.array(fc.boolean(), { minLength: 5, maxLength: 5 })

export const chosenJobs: fc.Arbitrary<{ job: Job; choice: Choice }> = fc
	.tuple(jobs, picks, picks)
	.map(([job, left, taken]) => ({
		job,
		choice: {
			leftOut: mayLeave(job).filter((_, n) => left[n]),
			extras: job.extras.filter((_, n) => taken[n]).map(({ key }) => key),
		},
	}))

/** The same job with its lines, containers, visits and extras written down in another order. */
export const reordered = (job: Job): fc.Arbitrary<Job> => {
	const shuffled = <T>(items: readonly T[]) =>
		fc.shuffledSubarray([...items], { minLength: items.length, maxLength: items.length })
	const inside = <T extends { readonly lines: readonly JobLine[] }>(items: readonly T[]) =>
		shuffled(items).chain((all) =>
			fc.tuple(...all.map((item) => shuffled(item.lines).map((of) => ({ ...item, lines: of })))),
		)
	return fc
		.record({ visits: shuffled(job.visits), containers: inside(job.containers), extras: inside(job.extras) })
		.map((written) => ({ ...job, ...written }))
}
