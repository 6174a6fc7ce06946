import { isWithin } from '../difference'
import type { Desk, Known, Target } from './desk'
import { clearOfGreens, echoesWithin, echoOf } from './judge'
import { accentsApart } from './picks'

/** A material that may lead a palette, what it echoes, and what it is worth as a leading accent, 0 to about 1. */
export type Lead = { readonly known: Known; readonly echoes: Target | null; readonly worth: number }

/** Leads that are weighed against each other; further ones come in only to make up three. */
const mostLeads = 36
const wanted = 3
/** What a second and third colour of the building are worth over the same one again. */
const otherTarget = 0.3

function leadOf(known: Known, desk: Desk): Lead {
	const { material, fromTargets } = known
	const echo = echoOf(desk, fromTargets)
	const near = echo === null ? 0 : 1 - echo.difference / (2 * echoesWithin)
	const own = (material.role === 'accent' ? 0.2 : 0) + (material.inStock > 0 ? 0.1 : 0)
	return { known, echoes: echo?.target ?? null, worth: 0.45 * near + own }
}

const isApart = (a: Lead, b: Lead): boolean => !isWithin(a.known.lab, b.known.lab, accentsApart)

function byWorth(a: Lead, b: Lead): number {
	return b.worth - a.worth || (a.known.material.id < b.known.material.id ? -1 : 1)
}

/** The best ones, and, where fewer, as many as lie apart from each other to make up three. */
function pool(desk: Desk): Lead[] {
	const all = desk.usable.map((known) => leadOf(known, desk)).toSorted(byWorth)
	const best = all.slice(0, mostLeads)
	const apart: Lead[] = []
	for (const lead of all) {
		if (apart.length === wanted) break
		if (apart.every((other) => isApart(lead, other))) apart.push(lead)
	}
	const further = apart.filter((lead) => !best.includes(lead))
	const full = [...best, ...further].map((lead) => ({
		...lead,
		worth: lead.worth + 0.35 * clearOfGreens(desk, lead.known.lab),
	}))
	return full.toSorted(byWorth)
}

const worthOf = (leads: readonly Lead[]): number => {
	const isNew = ({ echoes }: Lead, index: number) =>
		echoes !== null && leads.findIndex((lead) => lead.echoes === echoes) === index
	return leads.reduce((sum, lead, index) => sum + lead.worth + (isNew(lead, index) ? otherTarget : 0), 0)
}

/** Of all sets of up to three that lie apart pair by pair the largest, and among those the worthiest. */
function bestSet(leads: readonly Lead[]): Lead[] {
	const apart = new Map(leads.map((lead) => [lead, new Set(leads.filter((other) => isApart(lead, other)))]))
	let [best, most]: [Lead[], number] = [[], 0]
	const consider = (chosen: Lead[], left: readonly Lead[]) => {
		const worth = worthOf(chosen)
		if (chosen.length > best.length || (chosen.length === best.length && worth > most)) [best, most] = [chosen, worth]
		if (chosen.length === wanted) return
		for (const [index, lead] of left.entries())
			consider(
				[...chosen, lead],
				left.slice(index + 1).filter((other) => apart.get(lead)?.has(other)),
			)
	}
	consider([], leads)
	return best
}

/**
 * Up to three materials to lead three palettes, more than ΔE00 10 apart pair by pair: three wherever the usable
 * materials hold three such (for certain up to `mostLeads` of them). Worthiest first.
 */
export const leadsOf = (desk: Desk): Lead[] => bestSet(pool(desk)).toSorted(byWorth)
