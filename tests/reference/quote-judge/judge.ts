import type { Job } from '@/lib/pricing/job'
import type { Choice } from '@/lib/pricing/quote/choice'
import { exact, type Fraction, half, none, percent, plus, shareOut } from './exact'
import { type Entry, ledger } from './ledger'

type Classes = readonly [Fraction, Fraction, Fraction]
type Bill = 'agreement' | 'apart'
type Asked = {
	readonly what: string
	readonly place: string
	readonly bill: Bill
	readonly classes: Classes
	readonly cents: Fraction
}

/** All figures of a quote and its costing, in cents, minutes and per cent, as plain numbers. */
export type Verdict = {
	readonly lines: Record<string, number>
	readonly tax: Record<string, number>
	readonly netCents: number
	readonly totalCents: number
	readonly due: readonly (readonly [number, string])[]
	readonly minutes: number
	readonly materialCents: number
	readonly labourCents: number
	readonly costCents: number
	readonly marginPercent: number | null
	readonly shortfallCents: number
}

const plain = (value: Fraction) => value.valueOf()

function byClass(amount: Fraction, like: Classes): Classes {
	const [plants = none, goods = none, labour = none] = shareOut(amount, like)
	return [plants, goods, labour]
}

/** A fixed price, or its supplement, over the doors of what it pays for, in proportion to what that would come to. */
function season(amount: Fraction, what: string, bill: Bill, paid: readonly Entry[]): Asked[] {
	const doors = [...new Set(paid.map(({ place }) => place))]
	const sums = doors.map((door): Classes => {
		const here = paid.filter(({ place }) => place === door).map(({ classes }) => classes)
		return [plus(here.map(([a]) => a)), plus(here.map(([, b]) => b)), plus(here.map(([, , c]) => c))]
	})
	const shares = shareOut(amount, sums.map(plus))
	return doors.map((place, n) => {
		const cents = shares[n] ?? none
		return { what: `${what} ${place}`, place, bill, cents, classes: byClass(cents, sums[n] ?? [none, none, none]) }
	})
}

/** Lifted to the minimum, visit by visit; never under an agreement. */
function minimums(lines: readonly Asked[], { agreement, rates }: Job): Asked[] {
	if (agreement.is !== 'none') return []
	return lines
		.filter(({ what }) => what.startsWith('travel'))
		.flatMap(({ place }) => {
			const here = plus(lines.filter((line) => line.place === place).map(({ cents }) => cents))
			const lacking = exact(rates.minimumVisitCents).sub(here)
			if (lacking.lte(0)) return []
			return [{ what: `minimum ${place}`, place, bill: 'apart', cents: lacking, classes: [none, none, lacking] }]
		})
}

/** Per class at the rate of the place; of each bill and rate on the invoice, or line by line. */
function taxes(lines: readonly Asked[], { payer, rates, visits }: Job): Map<string, Fraction> {
	const found = new Map<string, Fraction[]>()
	if (payer.exemptCertificate !== null) return new Map()
	const { plants, goods, labour } = rates.tax.taxable
	const isWhole = rates.tax.labour === 'taxed whole' && (plants || goods)
	for (const { place, bill, classes } of lines) {
		const milli = visits.find((visit) => visit.place === place)?.taxMilliPercent ?? Number.NaN
		const base = plus(classes.filter((_, n) => [plants, goods, labour || isWhole][n]))
		const key = `${bill} ${milli}`
		found.set(key, [...(found.get(key) ?? []), base.mul(milli).div(100_000)])
	}
	const isByLine = rates.tax.basis === 'line'
	const round = (each: Fraction[]) => (isByLine ? plus(each.map(half)) : half(plus(each)))
	return new Map([...found].map(([key, each]) => [key, round(each)]))
}

/** A deposit and a balance from households without an agreement, net days from businesses, instalments by agreement. */
function dues(total: Fraction, agreed: Fraction, { payer, agreement, rates }: Job): Verdict['due'] {
	const apart = total.sub(agreed)
	const parts: [Fraction, string][] = []
	if (agreed.gt(0)) parts.push([agreed, 'by agreement'])
	if (apart.equals(0) && agreed.gt(0)) return parts.map(([cents, when]) => [plain(cents), when])
	if (payer.kind === 'business') parts.push([apart, `after install ${payer.netDays}`])
	else if (agreement.is !== 'none' || rates.depositPercent === 0) parts.push([apart, 'at install'])
	else {
		const deposit = exact(rates.depositPercent)
		const [first = none, balance = none] = shareOut(apart, [deposit, exact(100).sub(deposit)])
		parts.push([first, 'on approval'])
		// Nothing is never asked for as a second payment.
		if (!balance.equals(0)) parts.push([balance, 'at install'])
	}
	return parts.map(([cents, when]) => [plain(cents), when])
}

function linesOf(job: Job, entries: readonly Entry[]): Asked[] {
	const open = entries.filter(({ isTaken, isPaid }) => isTaken && !isPaid)
	const listed = open.map(
		({ what, place, asked, classes }): Asked => ({
			...{ what, place, bill: 'apart', cents: asked },
			classes: byClass(asked, classes),
		}),
	)
	if (job.agreement.is !== 'fixed') return [...listed, ...minimums(listed, job)]
	const paid = entries.filter(({ isPaid }) => isPaid)
	return [
		...listed,
		...season(exact(job.agreement.cents), 'season', 'agreement', paid),
		...season(exact(job.supplementCents), 'supplement', 'apart', paid),
	]
}

/** The margin is (price before tax − cost) ÷ price before tax; the shortfall is to the least price that leaves the floor. */
function costs(entries: readonly Entry[], net: Fraction, floor: number) {
	const taken = entries.filter(({ isTaken }) => isTaken)
	const material = plus(taken.map((entry) => entry.material))
	const labour = plus(taken.map((entry) => entry.labour))
	const cost = material.add(labour)
	const least = cost.div(percent(exact(1), 100 - floor)).ceil()
	return {
		minutes: plain(plus(taken.map((entry) => entry.minutes))),
		materialCents: plain(material),
		labourCents: plain(labour),
		costCents: plain(cost),
		marginPercent: net.equals(0) ? null : plain(half(net.sub(cost).div(net).mul(1000)).div(10)),
		shortfallCents: Math.max(0, plain(least.sub(net))),
	}
}

/** What is nothing is not compared: a line or a tax of no cents may be said or left unsaid. */
const byName = (items: Iterable<readonly [string, Fraction]>) =>
	Object.fromEntries([...items].filter(([, cents]) => !cents.equals(0)).map(([key, cents]) => [key, plain(cents)]))

/** A quote and its costing worked anew, from the words of the trade, in exact fractions. */
export function judge(job: Job, choice: Choice): Verdict {
	const entries = ledger(job, choice)
	return verdict(job, linesOf(job, entries), entries)
}

/**
 * The same where each place takes one of several options: what is asked at a place is what that option asks there; the
 * fixed price is shared out anew by those shares, a minimum found anew, and one job is done with all packs together.
 */
export function judgeMixed(options: readonly Job[], at: (place: string) => number, choice: Choice): Verdict {
	const asked = options.flatMap((job, n) => linesOf(job, ledger(job, choice)).filter(({ place }) => at(place) === n))
	const plain = asked.filter(({ what }) => !/^(?:minimum|season) /.test(what))
	const [job] = options
	if (job === undefined) throw new Error('judgeMixed: there is no option')
	// Of equal remainders the earlier comes first: in the order in which a list shares the fixed price out.
	const doors = linesOf(job, ledger(job, choice)).filter(({ what }) => what.startsWith('season '))
	const shares = doors.flatMap(({ what }) => asked.filter((each) => each.what === what))
	const containers = job.containers.map((pot) => {
		const found = options[at(pot.place)]?.containers.find(({ id }) => id === pot.id)
		if (found === undefined) throw new Error('judgeMixed: an option lacks a container')
		return found
	})
	const season = job.agreement.is === 'fixed' && shares.length > 0 ? exact(job.agreement.cents) : none
	const parts =
		shares.length === 0
			? []
			: shareOut(
					season,
					shares.map(({ cents }) => cents),
				)
	const seasons = shares.map((share, n) => ({
		...share,
		cents: parts[n] ?? none,
		classes: byClass(parts[n] ?? none, share.classes),
	}))
	return verdict(job, [...plain, ...seasons, ...minimums(plain, job)], ledger({ ...job, containers }, choice))
}

function verdict(job: Job, lines: readonly Asked[], entries: readonly Entry[]): Verdict {
	const tax = taxes(lines, job)
	const net = plus(lines.map(({ cents }) => cents))
	const total = plus([net, ...tax.values()])
	const agreed = plus([
		...lines.filter(({ bill }) => bill === 'agreement').map(({ cents }) => cents),
		...[...tax].filter(([key]) => key.startsWith('agreement')).map(([, cents]) => cents),
	])
	return {
		lines: byName(lines.map(({ what, cents }) => [what, cents] as const)),
		tax: byName(tax),
		netCents: plain(net),
		totalCents: plain(total),
		due: dues(total, agreed, job),
		...costs(entries, net, job.rates.marginFloorPercent),
	}
}
