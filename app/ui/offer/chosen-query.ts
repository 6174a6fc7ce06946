import { placeEntries } from '@/lib/forms/answer/place-keys'
import { choiceQuery } from '@/lib/forms/read'
import type { OfferView } from '@/lib/proposal/offer/offer-view'
import type { Picked } from '@/lib/proposal/picked/picked-in'

/** A choice with the revision that is in view, as an address carries it: for the way on and back. */
export const pickedQuery = ({ option, places, extras, leftOut }: Picked, revision = ''): URLSearchParams =>
	choiceQuery({ option: option ?? '', place: placeEntries(places), extra: extras, without: leftOut, revision })

/** What is picked so far. */
export const chosenQuery = ({ chosen, onWall }: OfferView, revision = ''): URLSearchParams =>
	pickedQuery({ ...chosen, option: onWall?.key ?? null }, revision)

/** The same with one palette everywhere, or with none. */
export const wholeQuery = ({ chosen }: OfferView, option: string | null, revision = ''): URLSearchParams =>
	pickedQuery({ ...chosen, places: {}, option }, revision)
