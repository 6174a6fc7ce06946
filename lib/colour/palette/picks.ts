import { isWithin, labDifference } from '../difference'
import { isGreen } from '../is-seen'
import type { Desk, Known, Near, Target } from './desk'

// Common practice, no published source: these ΔE00 and this chroma.
/** Two colours of a palette are at least this far apart. */
const chipsApart = 8
/** An accent beside the leading one is at least this far from it. */
export const accentsApart = 10
/** OKLCh chroma up to which a thing is neutral: bone, bark, pewter, cone. */
const mostNeutral = 0.05

const isApart = (of: Known, from: readonly Known[], by: number): boolean =>
	from.every((other) => !isWithin(of.lab, other.lab, by))

const bestBy = (of: readonly Known[], worth: (of: Known) => number): Known | null =>
	of.reduce<{ known: Known; worth: number } | null>((best, known) => {
		const own = worth(known)
		return best === null || own > best.worth ? { known, worth: own } : best
	}, null)?.known ?? null

/** The leading materials of a palette: accent, second accent or none, stem, neutral. */
export type Picks = { readonly lead: Known; readonly second: Known | null; readonly rest: readonly Known[] }

export const allOf = ({ lead, second, rest }: Picks): Known[] => [lead, ...(second === null ? [] : [second]), ...rest]

/** What is looked at while one palette after the other is put together. */
export type Choice = { readonly desk: Desk; readonly echoes: Echoes; readonly before: readonly Picks[] }

/** For each colour of the building, what echoes it. */
export type Echoes = ReadonlyMap<Target, readonly Near[]>

/** What storage holds comes first among near equals; what an earlier proposal uses comes last. */
const favour = (known: Known, { before }: Choice): number =>
	(known.material.inStock > 0 ? 0.1 : 0) - (before.some((picks) => allOf(picks).includes(known)) ? 0.3 : 0)

const isNear = (a: Known, b: Known | null): boolean => b !== null && !isApart(a, [b], accentsApart)

/** Whether an earlier proposal has the same two accents, whichever of them leads. */
const isPairTaken = (a: Known, b: Known, { before }: Choice): boolean =>
	before.some(({ lead, second }) => (isNear(a, lead) && isNear(b, second)) || (isNear(a, second) && isNear(b, lead)))

/** The accent that comes nearest to a colour of the building that the leading one does not echo. */
function secondOf(lead: Known, leadEchoes: Target | null, choice: Choice): Known | null {
	const found = [...choice.echoes]
		.filter(([target]) => target !== leadEchoes)
		.flatMap(
			([, near]) =>
				near.find(({ known }) => isApart(known, [lead], accentsApart) && !isPairTaken(lead, known, choice)) ?? [],
		)
	const differences = new Map(found.map(({ known, difference }) => [known, difference]))
	return bestBy([...differences.keys()], (known) => favour(known, choice) - (differences.get(known) ?? 0) / 12)
}

/** The stem that stands out most from the wall; where no stem is to be had, whatever else does. */
function contrast(picks: readonly Known[], choice: Choice): Known | null {
	const { usable, wall } = choice.desk
	const apart = usable.filter((known) => isApart(known, picks, chipsApart))
	const stems = apart.filter(({ material }) => material.role === 'thriller')
	const worth = (known: Known) => Math.min(1, labDifference(known.lab, wall) / 40) + favour(known, choice)
	return bestBy(stems.length > 0 ? stems : apart, worth)
}

/** What has hardly a colour, and a lightness that the others leave free. */
function neutral(picks: readonly Known[], choice: Choice): Known | null {
	const quiet = choice.desk.usable.filter(
		(known) => known.oklch.c <= mostNeutral && !isGreen(known.material) && isApart(known, picks, chipsApart),
	)
	const free = ({ oklch }: Known) => Math.min(...picks.map((pick) => Math.abs(pick.oklch.l - oklch.l)))
	return bestBy(quiet, (known) => 3 * free(known) + favour(known, choice))
}

/** The materials that lead the colours of one palette, as far as there are such. */
export function picksFor(lead: Known, leadEchoes: Target | null, choice: Choice): Picks {
	const second = secondOf(lead, leadEchoes, choice)
	const accents = allOf({ lead, second, rest: [] })
	const stem = contrast(accents, choice)
	const three = stem === null ? accents : [...accents, stem]
	const quiet = neutral(three, choice)
	return { lead, second, rest: [stem, quiet].filter((known) => known !== null) }
}
