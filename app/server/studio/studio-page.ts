import 'server-only'
import { studioName, whoIs } from '@/db/studio/studio'
import type { Act } from '@/lib/access/table'
import type { Viewer } from '@/lib/access/viewer'
import { mustMay, signedIn } from '../pages'

export type StudioPage = {
	readonly who: Viewer
	readonly frame: {
		readonly studio: string
		readonly who: { readonly name: string; readonly address: string } | undefined
	}
}

/** What every page of the studio begins with: who is asking, whether they may, and the head of the page. */
export async function studioPage(path: string, act: Act): Promise<StudioPage> {
	const who = await signedIn(path)
	mustMay(who, act, null)
	return { who, frame: { studio: (await studioName(who)) ?? '', who: await whoIs(who) } }
}
