import type { Viewer } from '@/lib/access/viewer'
import { picture } from '@/lib/picture/picture'
import type { Scene } from '@/lib/picture/scene'
import { describeScene } from '@/lib/picture/words/describe-scene'
import { wordsIn } from '@/lib/pricing/cost/words'
import { price } from '@/lib/pricing/price'
import { everything } from '@/lib/pricing/quote/choice'
import { costing } from '@/lib/pricing/quote/costing'
import { quote } from '@/lib/pricing/quote/quote'
import { askOf, paletteWords } from '@/lib/proposal/design/ask'
import { potStates } from '@/lib/proposal/design/pot-state'
import { seenIn } from '@/lib/proposal/design/seen-in'
import type { Desk, DeskPicture } from '@/lib/proposal/desk/desk'
import { deskExtra, deskOption } from '@/lib/proposal/desk/desk-view'
import type { Draft } from '@/lib/proposal/draft'
import { jobOf } from '@/lib/proposal/job-of'
import { makeOffer } from '@/lib/proposal/make'
import type { Offer } from '@/lib/proposal/offer/offer'
import { sceneOf } from '@/lib/proposal/offer/scene-of'
import { problems } from '@/lib/proposal/ready'
import { dayOf } from '@/lib/units/day'
import type { ProposalId } from '@/lib/units/id'
import { read } from '../../open'
import type { Stamp } from '../../stamp'
import { knownFor } from './known'

const pictureRatio = 1.5

function picturesOf(offer: Offer, option: string, measure: Scene['measure']): DeskPicture[] {
	return offer.places.flatMap(({ id: place, name }) => {
		const shown = { place, option, extras: [], leftOut: [], hour: 'day', measure } as const
		const scene = sceneOf(offer, shown)
		if (scene === undefined) return []
		return [{ place, name, svg: picture(scene, { ratio: pictureRatio }), says: describeScene(scene) }]
	})
}

/** Prices what is on the designer's desk, draws it, and says what stops it, storing nothing. */
export async function priceDraft(
	viewer: Viewer,
	{ proposal, draft, measured = false }: { proposal: ProposalId; draft: Draft; measured?: boolean },
	stamp: Pick<Stamp, 'at'>,
): Promise<Desk | undefined> {
	const known = read((db) => knownFor(db, viewer, 'see the costing', proposal, stamp))
	if (known === undefined) return undefined
	const { facts, timeZone, site, around } = known
	const today = dayOf(stamp.at, timeZone)
	const words = wordsIn(facts.studio.currency)
	const { offer } = makeOffer(draft, facts, words.money, 1, today)
	const ask = askOf(draft, facts, site)
	const priced = draft.options.flatMap((option) => {
		const job = jobOf(draft, option, facts)
		return job === null ? [] : [{ option, key: option.key, ...price(job, words) }]
	})
	return {
		options: priced.map(({ option, key, list, costs }) => ({
			...deskOption(
				{ key, quote: quote(list, everything), costing: costing(list, costs, everything) },
				offer,
				facts.rates,
				words.money,
			),
			words: ask === undefined ? [] : paletteWords(option, ask),
			seen: seenIn(option, draft, facts),
			pots: potStates(option, draft, facts, around),
			pictures: picturesOf(offer, key, measured ? facts.studio.lengths : 'none'),
		})),
		extras: priced[0]?.costs.parts.filter(({ is }) => is === 'extra').map((part) => deskExtra(part, words.money)) ?? [],
		problems: problems(draft, facts, today),
	}
}

/** The draft as the client would see it: the same offer that publishing would freeze. */
export async function previewOffer(
	viewer: Viewer,
	{ proposal, draft }: { proposal: ProposalId; draft: Draft },
	stamp: Pick<Stamp, 'at'>,
): Promise<Offer | undefined> {
	const known = read((db) => knownFor(db, viewer, 'see the costing', proposal, stamp))
	if (known === undefined) return undefined
	const today = dayOf(stamp.at, known.timeZone)
	return makeOffer(draft, known.facts, wordsIn(known.facts.studio.currency).money, 1, today).offer
}
