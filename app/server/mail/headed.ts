import 'server-only'
import type { Named } from '@/app/documents/mail/pictured'
import { type Cover, describeCover } from '@/lib/proposal/offer/cover'
import { hashOf } from '@/lib/record/hash'
import { coverPng } from '../picture/cover/cover-png'
import { env } from '../start/env'

export type AttachedCover = Named & { readonly content: Buffer }

/** The cover of a mail, drawn: the same facts give the same name. @throws where it cannot be drawn */
export async function drawnCover(cover: Cover): Promise<AttachedCover> {
	const cid = `${hashOf(cover).slice(0, 16)}.cover@${new URL(env().siteUrl).hostname}`
	return { cid, alt: describeCover(cover), content: await coverPng(cover) }
}
