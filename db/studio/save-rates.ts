import type { Viewer } from '@/lib/access/viewer'
import type { Rates } from '@/lib/pricing/rates'
import { canonical } from '@/lib/record/canonical'
import { read, write } from '../open'
import { weighDrafts } from '../proposals/desk/weigh-drafts'
import type { Stamp } from '../stamp'
import { type Denied, denied } from '../viewer'
import { keepRates, latestRates, type VersionedRates } from './rates'

/** The rates that the next price will be made with. */
export async function readRates(viewer: Viewer): Promise<VersionedRates | undefined> {
	if (denied(viewer, 'change settings', null) !== null) return undefined
	return read(latestRates)
}

export type SavedRates =
	| { readonly ok: true; readonly version: number }
	| { readonly ok: false; readonly why: 'changed elsewhere' | 'nothing changed' }
	| Denied

/** A new version, made from `version`; what is published keeps the rates that made it. */
export async function saveRates(
	viewer: Viewer,
	{ version, rates: next }: { readonly version: number; readonly rates: Rates },
	stamp: Stamp,
): Promise<SavedRates> {
	const no = denied(viewer, 'change settings', null)
	if (no !== null) return no
	return write((tx): SavedRates => {
		const newest = latestRates(tx)
		if (newest.version !== version) return { ok: false, why: 'changed elsewhere' }
		if (canonical(newest.rates) === canonical(next)) return { ok: false, why: 'nothing changed' }
		const made = keepRates(tx, stamp, viewer, next)
		weighDrafts(tx, 'everybody')
		return { ok: true, version: made }
	})
}
