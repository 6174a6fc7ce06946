import 'server-only'
import { z } from 'zod'
import type { Letter } from '@/app/documents/mail/letter'
import { finish } from '@/app/documents/mail/letters'
import { addressChangedLetter, newDeviceLetter, signInLetter } from '@/app/documents/mail/sign-in-letters'
import type { Leased } from '@/db/outbox/lease'
import type { Addressee } from '@/db/outbox/mail-facts'
import { keepToken } from '@/db/sign-in/token'
import { momentWords } from '@/lib/format/moment'
import type { PersonId } from '@/lib/units/id'
import { momentSchema } from '@/lib/units/schema'
import { codeHash, linkHash, randomCode, randomToken } from '../sign-in/secrets'
import { now } from '../start/clock'
import { env } from '../start/env'
import { written } from './written'

const asked = z.object({ askHash: z.string(), to: z.string() })
const arrived = z.object({ at: momentSchema, device: z.string() })
const changed = z.object({ at: momentSchema, address: z.string() })

type About = 'sign-in link' | 'new device' | 'address changed'
const all: ReadonlySet<string> = new Set<About>(['sign-in link', 'new device', 'address changed'])

export const isAboutSignIn = (message: Leased['message']): message is About => all.has(message)

/** That an address was changed goes to the old one, which the mail's own facts know alone. */
export const sentTo = (to: Addressee, { message, facts }: Pick<Leased, 'message' | 'facts'>): Addressee =>
	message === 'address changed' ? { ...to, address: changed.parse(facts).address } : to

/** The link and the code exist from here on, and only in this mail: what is stored of them are hashes. */
async function link(facts: unknown, person: PersonId, to: Addressee): Promise<Letter | undefined> {
	const { askHash, to: path } = asked.parse(facts)
	const token = randomToken()
	const code = randomCode()
	const minted = { linkHash: linkHash(token), codeHash: codeHash(code, askHash), askHash, address: to.address }
	if (!(await keepToken(person, minted, now()))) return undefined
	const href = `${env().siteUrl}/sign-in/confirm?${new URLSearchParams({ token, callbackUrl: path })}`
	return finish(
		signInLetter(code),
		to,
		href,
		'If you did not ask for this, ignore it: nothing happens unless the button is pressed.',
	)
}

type Mail = { readonly message: About; readonly person: PersonId; readonly facts: unknown }

/** What a mail about somebody's way in says; undefined for a link on its way to an address that is theirs no more. */
export async function composeSignIn({ message, person, facts }: Mail, to: Addressee): Promise<Letter | undefined> {
	const { siteUrl } = env()
	const small = written.safety(to.studio)
	switch (message) {
		case 'sign-in link':
			return link(facts, person, to)
		case 'new device': {
			const { at, device } = arrived.parse(facts)
			const letter = newDeviceLetter({ device, moment: momentWords(at, to.timeZone) })
			return finish(letter, to, `${siteUrl}/devices?for=${to.handle}`, small)
		}
		case 'address changed': {
			const { at } = changed.parse(facts)
			return finish(addressChangedLetter({ moment: momentWords(at, to.timeZone) }), to, `${siteUrl}/sign-in`, small)
		}
		default:
			return message satisfies never
	}
}
