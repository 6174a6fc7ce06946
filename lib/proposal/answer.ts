import type { Choice } from '../pricing/quote/choice'
import { type Quote, quote } from '../pricing/quote/quote'
import type { ContainerId } from '../units/id'
import type { Offer, OfferOption } from './offer/offer'

/** What a client takes: an option by its key, extras by theirs, containers left out by id. */
export type Wanted = {
	readonly option: string
	readonly extras: readonly string[]
	readonly leftOut: readonly ContainerId[]
}

export type NotOffered =
	| 'that palette is not offered'
	| 'that extra is not offered'
	| 'that container may not be left out'
	| 'nothing would be left'
	| 'that part is not in the design'
	| 'that extra belongs where everything is left out'

export type Taken =
	| { readonly ok: true; readonly option: OfferOption; readonly choice: Choice; readonly quote: Quote }
	| { readonly ok: false; readonly why: NotOffered }

const refuse = (why: NotOffered): Taken => ({ ok: false, why })

/** Places where a container stays. */
function kept({ containers }: Offer, out: ReadonlySet<string>): ReadonlySet<string> {
	return new Set(containers.filter(({ id }) => !out.has(id)).map(({ place }) => place))
}

/** Holds what a client wants against what was offered, and prices it from the frozen lists. */
export function take(offer: Offer, wanted: Wanted): Taken {
	const option = offer.options.find(({ key }) => key === wanted.option)
	if (option === undefined) return refuse('that palette is not offered')
	const out = new Set(wanted.leftOut)
	const added = new Set(wanted.extras)
	for (const id of out)
		if (!offer.containers.some((each) => each.id === id && each.mayLeaveOut))
			return refuse('that container may not be left out')
	const places = kept(offer, out)
	if (places.size === 0) return refuse('nothing would be left')
	for (const key of added) {
		const extra = offer.extras.find((each) => each.key === key)
		if (extra === undefined) return refuse('that extra is not offered')
		if (!places.has(extra.place)) return refuse('that extra belongs where everything is left out')
	}
	const choice: Choice = { leftOut: [...out], extras: [...added] }
	return { ok: true, option, choice, quote: quote(option.prices, choice) }
}
