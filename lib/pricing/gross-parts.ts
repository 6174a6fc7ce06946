import { type Cents, cents } from '@/lib/units/cents'
import { divideHalfUp, thousandths } from '@/lib/units/decimal'
import type { ContainerId } from '@/lib/units/id'
import { boughtFor } from './cost/bought'
import type { Words } from './cost/explain'
import { containerWork, driveWork, extraWork, stopWork, takeDownWork } from './cost/minutes'
import { type Gross, ofPrice, ofWork } from './gross'
import type { Job, JobContainer, JobVisit } from './job'

const litres = (soilL: number, centsPerLitre: number): Cents =>
	cents(Number(divideHalfUp(thousandths(soilL) * BigInt(centsPerLitre), 1000n)))

/** All of it for a new container; a top-up each spring; none otherwise. */
function soilLitres({ soilL, isNew }: JobContainer, { quarter, rates }: Job): number {
	if (isNew) return soilL
	if (quarter !== 'spring') return 0
	return Number(divideHalfUp(thousandths(soilL) * thousandths(rates.soil.topUpPercent), 100_000n)) / 1000
}

type Packs = ReturnType<typeof boughtFor>

function containerParts(container: JobContainer, job: Job, words: Words, bought: Packs): Gross[] {
	const { id, place, name, isNew } = container
	const { rates } = job
	const planted = ofWork({ is: 'container', container: id, name, place }, job, words, {
		lines: container.lines,
		work: containerWork(container, job),
		bought,
	})
	const soil = soilLitres(container, job)
	const soilPart = ofPrice(
		{ is: 'soil', container: id, name, place },
		'goods',
		litres(soil, rates.soil.priceCentsPerLitre),
		litres(soil, rates.soil.costCentsPerLitre),
	)
	const dump = ofPrice(
		{ is: 'disposal', container: id, name, place },
		'labour',
		cents(rates.disposal.priceCents),
		cents(rates.disposal.costCents),
	)
	const visit = job.visits.find((each) => each.place === place)
	const down = visit?.takeDown
		? [
				ofWork({ is: 'take-down', container: id, name, place }, job, words, {
					work: [takeDownWork(container, rates)],
				}),
			]
		: []
	return [planted, ...(soil > 0 ? [soilPart] : []), ...(isNew ? [] : [dump]), ...down]
}

/** Set-up, loading and the way there; a flat zone price stands in for the drive's price, never for its cost. */
function travelPart(visit: JobVisit, job: Job, words: Words): Gross {
	const drive = driveWork(visit, job.rates)
	const part = { is: 'travel', name: visit.name, place: visit.place } as const
	const whole = ofWork(part, job, words, {
		work: [...stopWork(job.rates), drive],
	})
	if (visit.zoneCents === null) return whole
	const stop = ofWork(part, job, words, { work: stopWork(job.rates) })
	const price = cents(stop.cents + visit.zoneCents)
	return {
		...whole,
		split: { ...whole.split, labour: price },
		labourPriceCents: price,
		cents: price,
	}
}

/** @throws when a container or an extra stands at a place that has no visit */
export function grossParts(job: Job, words: Words, leftOut: readonly ContainerId[]): Gross[] {
	const places = new Set(job.visits.map(({ place }) => place))
	const first = job.visits[0]
	if (first === undefined) throw new Error('price: a job needs a visit')
	for (const { place, name } of [...job.containers, ...job.extras])
		if (!places.has(place)) throw new Error(`price: ${name} stands at a place without a visit`)
	const minutes = job.rates.designMinutes[job.design]
	const bought = boughtFor(job, leftOut)
	const design = ofWork({ is: 'design', name: 'Design', place: first.place }, job, words, {
		work: [{ what: `${job.design} design`, minutes, how: `${minutes} min` }],
		hands: 'owner',
	})
	return [
		...job.containers.flatMap((container) => containerParts(container, job, words, bought)),
		...job.visits.map((visit) => travelPart(visit, job, words)),
		design,
		...job.extras.map((extra) =>
			ofWork({ is: 'extra', extra: extra.key, name: extra.name, place: extra.place }, job, words, {
				lines: extra.lines,
				work: extraWork(extra, job.rates),
				bought,
			}),
		),
	]
}
