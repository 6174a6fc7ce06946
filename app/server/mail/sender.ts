import 'server-only'
import { z } from 'zod'
import { type Letter, letterText } from '@/app/documents/mail/letter'
import { letterHtml } from '@/app/documents/mail/letter-html'
import { type Leased, leaseMail, type Outcome, settleMail } from '@/db/outbox/lease'
import { addressee } from '@/db/outbox/mail-facts'
import { viewerOf } from '@/db/viewer'
import type { Viewer } from '@/lib/access/viewer'
import { isFinal } from '@/lib/record/is-final'
import { stamp } from '../start/clock'
import { log } from '../start/log'
import { compose } from './compose'
import { sentTo } from './compose-sign-in'
import { drawnCover } from './headed'
import { drawnPictures } from './pictures'
import { deliver, type Shown } from './transport'

const atOnce = 10

const word = z.string().nullable().catch(null)
/** What of an error may stand in a log: its message can hold what the server said, and with it an address. */
const failed = z
	.object({ name: word, code: word, responseCode: z.int().nullable().catch(null), command: word })
	.catch({ name: null, code: null, responseCode: null, command: null })

/** A mail says all it has to without its pictures: where one cannot be drawn it goes without any. */
async function picturesFor({ cover, drawings }: Letter, { id: mail, message }: Leased): Promise<Shown> {
	try {
		return {
			cover: cover && (await drawnCover(cover)),
			pictures: drawings === undefined ? [] : await drawnPictures(drawings),
		}
	} catch (error) {
		log().error({ act: 'mail without pictures', mail, message, ...failed.parse(error) })
		return { pictures: [] }
	}
}

async function sendOne(system: Viewer, leased: Leased): Promise<Outcome> {
	try {
		const known = leased.person === null ? undefined : await addressee(system, leased.person)
		const to = known && sentTo(known, leased)
		const letter = await compose(system, leased, to)
		if (letter === undefined || to === undefined) return 'dropped'
		const { subject, studio } = letter
		const shown = await picturesFor(letter, leased)
		await deliver({
			id: leased.id,
			to,
			from: studio,
			subject,
			text: letterText(letter),
			html: await letterHtml(letter, shown),
			...shown,
		})
		return 'sent'
	} catch (error) {
		const failure = failed.parse(error)
		const outcome = isFinal(failure, leased.tries) ? 'lost' : 'failed'
		const { id: mail, message, tries } = leased
		log().error({ act: `mail ${outcome}`, mail, message, tries, ...failure })
		return outcome
	}
}

/** Sends what is due; each mail is leased, made, handed over and then ticked off. @returns how many were taken up */
export async function sendDue(): Promise<number> {
	const system = await viewerOf('system')
	const due = await leaseMail(system, atOnce, stamp())
	for (const leased of due) await settleMail(system, leased, await sendOne(system, leased), stamp())
	return due.length
}

declare global {
	/** One sender a process: what wakes it, whichever bundle asks. */
	var doorsillWake: (() => void) | undefined
}

const pauseMs = 1500

/** Resolves after a pause, or as soon as somebody calls `wakeSender`. */
function pause(): Promise<void> {
	return new Promise((resolve) => {
		const timer = setTimeout(resolve, pauseMs)
		globalThis.doorsillWake = () => {
			clearTimeout(timer)
			resolve()
		}
	})
}

async function keepSending(): Promise<never> {
	for (;;) {
		const taken = await sendDue().catch((error: unknown) => {
			log().error({ act: 'sender failed', error: error instanceof Error ? error.message : 'unknown' })
			return 0
		})
		if (taken === 0) await pause()
	}
}

/** Starts the one sender of the process: round after round while there is mail, then a pause. */
export function startSender(): void {
	if (globalThis.doorsillWake !== undefined) return
	globalThis.doorsillWake = () => undefined
	void keepSending()
}

/** There is mail to send: now rather than at the next look. */
export const wakeSender = (): void => globalThis.doorsillWake?.()
