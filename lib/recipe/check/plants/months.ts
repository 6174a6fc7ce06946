import { capital, list } from '../../../format/words'
import { monthName, standingMonths } from '../../almanac/months'
import type { Planned } from '../../planned'
import type { Finding } from '../finding'
import { finding } from '../finding'
import type { Check, Setting } from '../setting'

/** Not to be had at the install, unless storage holds enough. A card that names no month is not asked. */
function toBeHad({ material: { id, name, had, inStock }, count }: Planned, { month }: Setting): Finding[] {
	if (had.length === 0 || had.includes(month) || inStock >= count) return []
	const says = `${capital(name)} cannot be had in ${monthName(month)}.`
	return [finding(`had/${id}`, 'look again', says, 'Take a substitute, or buy it while it can be had.')]
}

/** Past its best before the season is over. */
function toLast({ material: { id, name, lasts } }: Planned, { quarter, month }: Setting): Finding[] {
	const months = standingMonths(quarter, month)
	const missed = months.filter((each) => !lasts.includes(each))
	if (lasts.length === 0 || missed.length === 0) return []
	const says = `${capital(name)} will not stand through ${list(missed.map(monthName))}, and it goes in for ${quarter}.`
	const weight = missed.length * 2 > months.length ? 'look again' : 'caution'
	return [finding(`lasts/${id}`, weight, says, 'Swap it on a visit in between, or take what lasts.')]
}

/** What cannot be had when it goes in, or does not last as long as its season. */
export const months: Check = (lines, setting) =>
	lines
		.filter(({ material: { kind } }) => kind !== 'mechanics')
		.flatMap((line) => [...toBeHad(line, setting), ...toLast(line, setting)])
