import type { Words } from '../pricing/cost/explain'
import type { JobInputs } from '../pricing/job-schema'
import { price } from '../pricing/price'
import { type Choice, everything } from '../pricing/quote/choice'
import { type Costing, costing } from '../pricing/quote/costing'
import { mixedJob } from '../pricing/quote/mixed-job'
import { quote } from '../pricing/quote/quote'
import type { Rates } from '../pricing/rates'
import type { Offer, OfferOption } from '../proposal/offer/offer'
import { type Palettes, paletteAt, palettesInWords, pricesOf } from '../proposal/picked/palettes'
import { tenthsOf, type Weighed } from './weigh'

export type Inputs = readonly { readonly key: string; readonly job: JobInputs }[]

/** How a proposal shows in the season's ledger. With several palettes and none chosen, the one of least price stands for all. */
export type Standing = Weighed & {
	readonly palette: string
	readonly paletteCount: number
	readonly paletteHexes: string
}

export const hexesOf = ({ palette }: Pick<OfferOption, 'palette'>): string => palette.map(({ hex }) => hex).join(' ')

/** The studio's side of what is taken, from frozen inputs. @throws when the inputs lack an option */
export function costingOf(taken: Palettes, inputs: Inputs, rates: Rates, words: Words, choice: Choice): Costing {
	const jobOf = ({ key }: OfferOption) => {
		const found = inputs.find((each) => each.key === key)
		if (found === undefined) throw new Error(`costingOf: there are no inputs for the option ${key}`)
		return found.job
	}
	const job = mixedJob(jobOf(taken.option), (place) => jobOf(paletteAt(taken, place)))
	return costing(pricesOf(taken), price({ ...job, rates }, words, choice.leftOut).costs, choice)
}

const total = (option: OfferOption) => quote(option.prices, everything).totalCents

/** What the palette of least price comes to, with everything and with tax. @throws when the offer has no palette */
export const leastTotal = (offer: Offer) => total(cheapest(offer))

function cheapest({ options }: Offer): OfferOption {
	const [least] = options.toSorted((a, b) => total(a) - total(b))
	if (least === undefined) throw new Error('standing: the offer has no option')
	return least
}

export function standing(
	offer: Offer,
	inputs: Inputs,
	rates: Rates,
	words: Words,
	chosen?: Palettes & { choice: Choice },
): Standing {
	const taken = chosen ?? { option: cheapest(offer), places: new Map() }
	const choice = chosen?.choice ?? everything
	const margin = costingOf(taken, inputs, rates, words, choice).marginPercent
	const count = chosen === undefined ? offer.options.length : 1
	return {
		palette: count === 1 ? palettesInWords(offer, taken) : '',
		paletteCount: count,
		paletteHexes: [taken.option, ...new Set(taken.places.values())].map(hexesOf).join(' '),
		valueCents: quote(pricesOf(taken), choice).netCents,
		marginTenths: tenthsOf(margin),
	}
}
