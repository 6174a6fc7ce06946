import type { Answering } from '@/db/proposals/answers/open'
import { readDraft, saveDraft } from '@/db/proposals/draft'
import { publish } from '@/db/proposals/publish'
import { type OfferPage, readOffer } from '@/db/proposals/read-offer'
import { steer } from '@/db/proposals/steer'
import type { WinterKey } from '@/demo/cast/proposals/proposals'
import { must } from '@/demo/play/must'
import type { Draft } from '@/lib/proposal/draft'
import type { Moment } from '@/lib/units/day'
import { found, type Studio } from '../stage/studio'

/** What a test needs done before its own act; each step is taken by the designer and has to succeed. */
export function stepsOf(of: Studio) {
	const idOf = (key: WinterKey) => of.cast().proposals[key]
	const page = async (key: WinterKey, at?: Moment): Promise<OfferPage> =>
		found(await readOffer(await of.as('designer'), idOf(key), of.stamp(at)))
	const draft = async (key: WinterKey) => found(await readDraft(await of.as('designer'), idOf(key), of.stamp()))
	return {
		idOf,
		page,
		draft,
		/** An answer to the revision that stands, out of a browser that names itself so. */
		answering: async (key: WinterKey): Promise<Answering> => {
			const { hash } = await page(key)
			return { proposal: idOf(key), revision: hash, once: of.once(), browser: 'a test’s browser' }
		},
		redraft: async (key: WinterKey, change: (draft: Draft) => Draft) => {
			const { version, draft: kept } = await draft(key)
			const saving = { proposal: idOf(key), version, draft: change(kept) }
			return must(key, await saveDraft(await of.as('designer'), saving, of.stamp()))
		},
		publish: async (key: WinterKey, at?: Moment) => {
			const { version } = await draft(key)
			const publishing = { proposal: idOf(key), version, once: of.once() }
			return must(key, await publish(await of.as('designer'), publishing, of.stamp(at)))
		},
		steer: async (key: WinterKey, step: 'withdraw' | 'reopen' | 'cancel' | 'install', reason = '') => {
			const steering = { proposal: idOf(key), step, reason, once: of.once() }
			return must(key, await steer(await of.as('designer'), steering, of.stamp()))
		},
	}
}
