import { choiceQuery } from '@/lib/forms/read'
import type { OfferView } from '@/lib/proposal/offer/offer-view'

/** What is picked so far, with the revision that is in view: for the way on and back. */
export const chosenQuery = ({ chosen }: OfferView, option = '', revision = ''): URLSearchParams =>
	choiceQuery({ option, extra: chosen.extras, without: chosen.leftOut, revision })
