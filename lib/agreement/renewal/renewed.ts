import type { Season } from '../../season/season'
import { type Cents, cents } from '../../units/cents'
import { type AgreedSeason, fixedCents } from '../season'
import type { Terms } from '../terms'
import { aYearOn } from './a-year-on'
import { type Rise, renewedPrice } from './renewed-price'

/** How the prices of a year become those of the next; a season that is adjusted takes its amount as it was typed. */
export type Renewal = {
	readonly rise: Rise
	readonly stepCents: number
	/** Named by the season as it will be. */
	readonly adjusted: readonly { readonly season: Season; readonly cents: Cents }[]
}

/** One season's price beside that of the year before; null where it is quoted. */
export type Beside = {
	readonly season: Season
	readonly was: Cents | null
	readonly is: Cents | null
	readonly difference: Cents | null
}
export type Renewed = {
	readonly terms: Terms
	readonly seasons: readonly Beside[]
	readonly total: { readonly was: Cents; readonly is: Cents; readonly difference: Cents }
}

const isSame = (a: Season, b: Season) => a.quarter === b.quarter && a.year === b.year

function repriced(season: AgreedSeason, { rise, stepCents, adjusted }: Renewal): AgreedSeason {
	const { price } = season
	if (price.is === 'quoted') return season
	const typed = adjusted.find((each) => isSame(each.season, season))?.cents
	return { ...season, price: { is: 'fixed', cents: typed ?? renewedPrice(price.cents, rise, stepCents) } }
}

const centsOf = ({ price }: AgreedSeason) => (price.is === 'fixed' ? price.cents : null)

function beside(was: AgreedSeason, is: AgreedSeason): Beside {
	const [before, after] = [centsOf(was), centsOf(is)]
	return {
		season: { quarter: is.quarter, year: is.year },
		...{ was: before, is: after },
		difference: before === null || after === null ? null : cents(after - before),
	}
}

/** Last year's terms for the year after at a new price, and old and new side by side. What cannot be issued says `problems`. */
export function renewed(last: Terms, renewal: Renewal): Renewed {
	const next = aYearOn(last)
	const pairs = next.seasons.map((season, index) => ({
		was: last.seasons[index] ?? season,
		is: repriced(season, renewal),
	}))
	const [was, is] = [fixedCents(pairs.map((each) => each.was)), fixedCents(pairs.map((each) => each.is))]
	return {
		terms: { ...next, seasons: pairs.map((each) => each.is) },
		seasons: pairs.map((each) => beside(each.was, each.is)),
		total: { was, is, difference: cents(is - was) },
	}
}
