import 'server-only'
import { z } from 'zod'
import type { Letter } from '@/app/documents/mail/letter'
import { finish } from '@/app/documents/mail/letters'
import { madeLetter, wrongLetter } from '@/app/documents/mail/visit-letters'
import type { Leased } from '@/db/outbox/lease'
import type { Addressee } from '@/db/outbox/mail-facts'
import { mailedVisit } from '@/db/outbox/mailed-visit'
import type { Viewer } from '@/lib/access/viewer'
import type { PersonId } from '@/lib/units/id'
import { idSchema } from '@/lib/units/schema'
import { env } from '../start/env'
import { written } from './written'

const reported = z.object({ visit: idSchema<'visit'>() })

export const visitLetters = {
	'something is wrong': { make: wrongLetter, door: 'studio' },
	'visit made': { make: madeLetter, door: 'client' },
} as const

export const isAboutVisit = (message: Leased['message']): message is keyof typeof visitLetters =>
	message in visitLetters

type Mail = { readonly message: keyof typeof visitLetters; readonly person: PersonId; readonly facts: unknown }

/** What a mail about a visit says; undefined when there is nothing left to say: it was planned or dropped by now, or its client is gone. */
export async function composeVisit(
	system: Viewer,
	{ message, person, facts }: Mail,
	to: Addressee,
): Promise<Letter | undefined> {
	const { visit } = reported.parse(facts)
	const about = await mailedVisit(system, { visit, person })
	if (about === undefined || about.state === 'dropped') return undefined
	const { make, door } = visitLetters[message]
	const { siteUrl } = env()
	const href =
		door === 'client' ? `${siteUrl}/home/${about.client}/visits?for=${to.handle}` : `${siteUrl}/studio/visits/${visit}`
	return finish(make(about), to, href, written[door](to.studio))
}
