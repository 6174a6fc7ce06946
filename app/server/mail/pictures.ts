import 'server-only'
import type { Drawings } from '@/app/documents/mail/drawings'
import type { Pictured } from '@/app/documents/mail/pictured'
import { picture } from '@/lib/picture/picture'
import { sceneHash } from '@/lib/picture/scene-hash'
import { hashOf } from '@/lib/record/hash'
import { jpeg } from '../picture/jpeg'
import { env } from '../start/env'

export type Attached = Pictured & { readonly content: Buffer }

/** Pixels across the whole mail, which is shown half as wide: the widest of these that is light enough. */
const widths = [1200, 1000, 800, 600]
/** In bytes, of all designs of one mail, its cover and its words apart; on its way a mail is a third heavier (RFC 2045, section 6.8). */
const most = 155_000

async function atWidth({ across, frame, each }: Drawings, whole: number): Promise<Attached[]> {
	const width = Math.floor(whole / across)
	const height = Math.round(width / frame.ratio)
	const { hostname } = new URL(env().siteUrl)
	const made: Attached[] = []
	for (const { scene, alt, caption } of each) {
		const bytes = await jpeg(picture(scene, frame), width, height)
		const cid = `${sceneHash(scene).slice(0, 16)}.${made.length + 1}@${hostname}`
		made.push({ cid, alt, caption, across, ratio: width / height, content: bytes })
	}
	return made
}

const weight = (made: readonly Attached[]) => made.reduce((sum, { content }) => sum + content.length, 0)

async function drawn(drawings: Drawings): Promise<Attached[]> {
	let made: Attached[] = []
	for (const width of widths) {
		made = await atWidth(drawings, width)
		if (weight(made) <= most) break
	}
	return made
}

const none = { of: '', made: Promise.resolve<Attached[]>([]) }
/** The contacts of a client get the same pictures one after the other. */
let last = none

/** The pictures of a mail, drawn: the same facts give the same bytes. @throws where one cannot be drawn */
export function drawnPictures(drawings: Drawings): Promise<Attached[]> {
	const of = hashOf(drawings)
	if (last.of === of) return last.made
	const made = drawn(drawings).catch((error: unknown) => {
		last = none
		throw error
	})
	last = { of, made }
	return made
}
