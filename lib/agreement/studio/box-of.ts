import type { Problem } from '../../proposal/problem'
import type { Blank } from '../template/blanks'
import type { Terms } from '../terms'

const boxOfBlank: Readonly<Partial<Record<Blank, string>>> = {
	start: 'from',
	end: 'to',
	places: 'season.0.container',
	containers: 'season.0.container',
	visits: 'season.0.quarter',
	prices: 'season.0.quarter',
	instalments: 'plan',
	waters: 'waters',
	sold: 'sold',
	lent: 'lent',
	'lights down': 'lightsDownBy',
	notice: 'noticeDays',
	law: 'law',
}
const known = new Map<string, string>(Object.entries(boxOfBlank))

const boxes: Readonly<Record<string, string>> = { price: 'price', containers: 'container', visits: 'install' }

function boxOfSeason(at: string, { seasons }: Terms): string {
	const index = seasons.findIndex(({ quarter, year }) => at.startsWith(`seasons.${quarter} ${year}`))
	const [part = ''] = at.split('.').slice(2)
	return `season.${Math.max(0, index)}.${boxes[part] ?? 'quarter'}`
}

/** Where a problem is mended: a box of the page, or another page. */
export function placeOf({ at }: Problem, terms: Terms): string {
	const [of = '', clause = '', blank = ''] = at.split('.')
	if (of === 'seasons') return clause === '' ? '#season.0.quarter' : `#${boxOfSeason(at, terms)}`
	if (of !== 'clauses') return `#${of}`
	const box = known.get(blank)
	return box === undefined ? `/studio/agreements/template#clause-${clause}` : `#${box}`
}
