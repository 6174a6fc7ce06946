import type { Job } from '@/lib/pricing/job'
import type { Choice } from '@/lib/pricing/quote/choice'
import { exact, type Fraction, half, none, percent, plus, shareOut } from './exact'
import { billed, containerWorking, extraWorking, litresOf, loaded, travelMinutes } from './work'

/** One thing that a client may be asked for, in cents; plants, goods and labour as they are taxed. */
export type Entry = {
	readonly what: string
	readonly place: string
	/** Whether the choice keeps it. */
	readonly isTaken: boolean
	/** Whether the fixed price of a season pays for it. */
	readonly isPaid: boolean
	readonly classes: readonly [Fraction, Fraction, Fraction]
	/** What is asked: the classes less discount, up to the step. */
	readonly asked: Fraction
	readonly minutes: Fraction
	readonly material: Fraction
	readonly labour: Fraction
}

type Draft = Omit<Entry, 'asked'> & { readonly group: 'containers' | 'extras' | 'charges' }

const sorted = <T>(items: readonly T[], by: (item: T) => string) =>
	[...items].sort((a, b) => (by(a) < by(b) ? -1 : by(a) > by(b) ? 1 : 0))

const priceOf = ({ classes }: Pick<Entry, 'classes'>) => plus(classes)

function drafts(job: Job, choice: Choice): Draft[] {
	const named = new Set<string>(job.agreement.is === 'fixed' ? job.agreement.containers : [])
	const left = new Set<string>(choice.leftOut)
	const containers = sorted(job.containers, ({ id }) => id)
	const extras = sorted(job.extras, ({ key }) => key)
	const visits = sorted(job.visits, ({ place }) => place)
	const { disposal, soil } = job.rates
	const priced = { minutes: none, labour: none }
	const byLabour = (minutes: Fraction, isDesign = false) => ({
		...{ minutes, material: none, labour: loaded(minutes, isDesign, job) },
		classes: [none, none, billed(minutes, job)] as const,
	})

	const pots = containers.flatMap((container): Draft[] => {
		const { id, place, isNew } = container
		const flags = { place, isTaken: !left.has(id), isPaid: named.has(id) }
		const { plants, goods, material, minutes } = containerWorking(container, job, left)
		const litres = litresOf(container, job)
		const isLast = job.visits.some((visit) => visit.place === place && visit.takeDown)
		return [
			{
				...{ ...flags, what: `container ${id}`, group: 'containers', minutes, material },
				...{ labour: loaded(minutes, false, job), classes: [plants, goods, billed(minutes, job)] },
			},
			{
				...{ ...flags, ...priced, what: `soil ${id}`, group: 'charges' },
				material: half(litres.mul(soil.costCentsPerLitre)),
				classes: [none, half(litres.mul(soil.priceCentsPerLitre)), none],
			},
			{
				...{ ...flags, ...priced, what: `disposal ${id}`, group: 'charges' },
				material: isNew ? none : exact(disposal.costCents),
				classes: [none, none, isNew ? none : exact(disposal.priceCents)],
			},
			{
				...{ ...flags, what: `take-down ${id}`, group: 'charges' },
				...byLabour(isLast ? exact(job.rates.containerMinutes.takeDown) : none),
			},
		]
	})

	const calls = (place: string) =>
		containers.some((each) => each.place === place && !left.has(each.id)) ||
		extras.some((each) => each.place === place && choice.extras.includes(each.key))
	const ways = visits.map((visit): Draft => {
		const { place, zoneCents } = visit
		const { stop, drive } = travelMinutes(visit, job)
		const whole = byLabour(stop.add(drive))
		const isPaid = containers.some((each) => each.place === place && named.has(each.id))
		const flags = { what: `travel ${place}`, place, isTaken: calls(place), isPaid, group: 'charges' } as const
		if (zoneCents === null) return { ...flags, ...whole }
		return { ...flags, ...whole, classes: [none, none, billed(stop, job).add(zoneCents)] }
	})

	const design: Draft = {
		...{ what: 'design', place: visits[0]?.place ?? '', isTaken: true, group: 'charges' },
		isPaid: job.agreement.is === 'fixed',
		...byLabour(exact(job.rates.designMinutes[job.design]), true),
	}
	const added = extras.map((extra): Draft => {
		const { plants, goods, material, minutes } = extraWorking(extra, job)
		return {
			...{ what: `extra ${extra.key}`, place: extra.place, group: 'extras', minutes, material, isPaid: false },
			isTaken: choice.extras.includes(extra.key),
			labour: loaded(minutes, false, job),
			classes: [plants, goods, billed(minutes, job)],
		}
	})
	return [...pots, ...ways, design, ...added]
}

/** The discount on all containers and on all extras, shared out; then each container up to the step. */
export function ledger(job: Job, choice: Choice): Entry[] {
	const all = drafts(job, choice)
	const off = job.agreement.is === 'discount' ? job.agreement.percent : 0
	const lessDiscount = (group: Draft['group']) => {
		const of = all.filter((each) => each.group === group)
		const shares = shareOut(half(percent(plus(of.map(priceOf)), group === 'charges' ? 0 : off)), of.map(priceOf))
		return of.map((each, n) => ({ each, exact: priceOf(each).sub(shares[n] ?? none) }))
	}
	const step = job.rates.presentationStepCents
	return [
		...lessDiscount('containers').map(({ each, exact: amount }) => ({
			...each,
			asked: amount.div(step).ceil().mul(step),
		})),
		...[...lessDiscount('charges'), ...lessDiscount('extras')].map(({ each, exact: asked }) => ({ ...each, asked })),
	]
}
