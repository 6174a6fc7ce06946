import { eyeWords, stripsOf } from '../../colour/eyes/eye-words'
import type { DeskOption } from '../desk/desk'
import type { Draft, DraftOption } from '../draft'
import type { Facts } from '../facts'
import { cardsOf } from '../job-of'
import { plannedIn } from './planned-in'

/** An option as people with a colour-vision deficiency see it before the walls of its containers. */
export function seenIn(option: DraftOption, draft: Draft, facts: Facts): DeskOption['seen'] {
	const pots = cardsOf(draft, facts).flatMap((card) => {
		const behind = facts.sites.find(({ id }) => id === card.place)
		return behind === undefined ? [] : [{ lines: plannedIn(option, card, facts), behind }]
	})
	return { strips: stripsOf(option.palette), says: eyeWords(option.palette, pots) }
}
