import type { Issued } from '@/lib/money/bills/bill'
import { clashes } from '@/lib/money/bills/clashes'
import { type Agreed, billsOfAgreement } from '@/lib/money/bills/of-agreement'
import { type Approval, billsOfApproval, type Since } from '@/lib/money/bills/of-approval'
import { stillToBill } from '@/lib/money/bills/still-to-bill'
import { type Charge, chargeCents } from '@/lib/money/charge'
import type { InvoiceNumber } from '@/lib/money/invoice/number'
import type { Season } from '@/lib/season/season'
import { type Cents, cents } from '@/lib/units/cents'
import { addDays, type Day, day } from '@/lib/units/day'
import { type Asked, agreementId, charge, invoiceNumber, proposalId, quoteOf, revision } from '../sample'

/** A client's year as it could go: what people do, one after the other, and what is billed after each. */
export const seasons: readonly Season[] = [
	{ quarter: 'winter', year: 2026 },
	{ quarter: 'spring', year: 2027 },
]

export type Act =
	| { readonly do: 'approve'; readonly season: number; readonly asked: Asked }
	| { readonly do: 'reopen' | 'install'; readonly season: number }
	| { readonly do: 'cancel'; readonly season: number; readonly perMille: number }
	| {
			readonly do: 'sign'
			readonly covers: readonly boolean[]
			readonly parts: readonly { readonly after: number; readonly cents: number }[]
	  }
	| { readonly do: 'end'; readonly perMille: number }
	| { readonly do: 'wait'; readonly days: number }

export type Approved = Approval & { readonly season: number; readonly asked: Asked }
export type Signed = Agreed & { readonly covers: readonly Season[] }

/** `back` is what was credited of the invoice so far. */
export type Written = {
	readonly key: string
	readonly number: InvoiceNumber
	readonly charge: Charge
	readonly back: number
}

export type World = {
	readonly today: Day
	readonly approvals: readonly Approved[]
	readonly agreements: readonly Signed[]
	readonly written: readonly Written[]
}

export const begin: World = { today: day('2026-09-01'), approvals: [], agreements: [], written: [] }

export const shareOf = (whole: number, perMille: number): Cents => cents(Math.floor((whole * perMille) / 1000))

const totalOf = ({ asked }: Approved) => asked.agreed + chargeCents(asked.apart)

const isOpen = (is: Since['is']) => is === 'approved' || is === 'installed'

const clashesIn = ({ approvals, agreements }: World) =>
	clashes(
		approvals
			.filter(({ since }) => isOpen(since.is))
			.map(({ proposal, season, approvedOn, asked }) => ({
				...{ proposal, approvedOn, isByAgreement: asked.agreed > 0 },
				season: seasons[season] ?? { quarter: 'summer', year: 1 },
			})),
		agreements.map(({ agreement, covers, ended }) => ({ agreement, seasons: covers, endedOn: ended?.on ?? null })),
	)

/** The approval of a season is its last one; the next is possible once that is open again. */
const lastOf = ({ approvals }: World, season: number) => approvals.findLast((each) => each.season === season)

function since(world: World, season: number, next: Since): World {
	const last = lastOf(world, season)
	if (last?.since.is !== 'approved') return world
	return { ...world, approvals: world.approvals.map((each) => (each === last ? { ...each, since: next } : each)) }
}

function approve(world: World, season: number, asked: Asked): World {
	const last = lastOf(world, season)
	if (last !== undefined && last.since.is !== 'reopened') return world
	const approval: Approved = {
		...{ proposal: proposalId(season + 1), revision: revision(world.approvals.length + 1) },
		...{ approvedOn: world.today, quote: quoteOf(asked), since: { is: 'approved' }, season, asked },
	}
	return { ...world, approvals: [...world.approvals, approval] }
}

function sign(world: World, { covers, parts }: Extract<Act, { do: 'sign' }>): World {
	const signed: Signed = {
		...{ agreement: agreementId(world.agreements.length + 1), signedOn: world.today, ended: null },
		instalments: parts.map(({ after, cents: amount }) => ({
			dueOn: addDays(world.today, after - 20),
			charge: charge(amount),
			since: 1,
		})),
		covers: seasons.filter((_, index) => covers[index]),
	}
	return { ...world, agreements: [...world.agreements, signed] }
}

export const wholeOf = ({ instalments }: Pick<Agreed, 'instalments'>): number =>
	instalments.reduce((all, each) => all + chargeCents(each.charge), 0)

function end(world: World, perMille: number): World {
	const last = world.agreements.at(-1)
	if (last === undefined || last.ended !== null) return world
	const ended = { on: world.today, owedCents: shareOf(wholeOf(last), perMille), netDays: 0 }
	return { ...world, agreements: [...world.agreements.slice(0, -1), { ...last, ended }] }
}

function done(world: World, act: Act): World {
	switch (act.do) {
		case 'approve':
			return approve(world, act.season, act.asked)
		case 'reopen':
			return since(world, act.season, { is: 'reopened' })
		case 'install':
			return since(world, act.season, { is: 'installed', on: world.today })
		case 'cancel': {
			const last = lastOf(world, act.season)
			const remainsCents = shareOf(last === undefined ? 0 : totalOf(last), act.perMille)
			return since(world, act.season, { is: 'cancelled', on: world.today, remainsCents })
		}
		case 'sign':
			return sign(world, act)
		case 'end':
			return end(world, act.perMille)
		case 'wait':
			return { ...world, today: addDays(world.today, act.days) }
		default:
			return act satisfies never
	}
}

export const toDo = ({ approvals, agreements, written, today }: World) =>
	stillToBill(
		[...approvals.flatMap(billsOfApproval), ...agreements.flatMap(billsOfAgreement)],
		written.map(
			({ key, number, charge: of, back }): Issued => ({ key, number, leftCents: cents(chargeCents(of) - back) }),
		),
		today,
	)

/** Writes the invoices and credit notes that are wanting. */
function bill(world: World): World {
	const { invoices, credits } = toDo(world)
	const back = (number: InvoiceNumber) =>
		credits.filter((each) => each.number === number).reduce((all, each) => all + each.cents, 0)
	const before = world.written.map((each) => ({ ...each, back: each.back + back(each.number) }))
	const fresh = invoices.map(({ key, charge: of }, index) => ({
		...{ key, charge: of, back: 0 },
		number: invoiceNumber(world.written.length + index + 1),
	}))
	return { ...world, written: [...before, ...fresh] }
}

/** An act is refused where a season would then be billed twice or by nobody. */
export function step(world: World, act: Act): World {
	const next = done(world, act)
	return clashesIn(next).length > 0 ? world : bill(next)
}
