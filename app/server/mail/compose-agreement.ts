import 'server-only'
import { z } from 'zod'
import {
	agreementDeclinedLetter,
	agreementEndedLetter,
	agreementIssuedLetter,
	agreementReminderLetter,
	agreementSignedLetter,
	agreementTakenBackLetter,
} from '@/app/documents/mail/agreement-letters'
import type { Letter } from '@/app/documents/mail/letter'
import { type Filled, finish } from '@/app/documents/mail/letters'
import type { Leased } from '@/db/outbox/lease'
import type { Addressee } from '@/db/outbox/mail-facts'
import { type MailedAgreement, mailedAgreement } from '@/db/outbox/mailed-agreement'
import type { Viewer } from '@/lib/access/viewer'
import { hashSchema } from '@/lib/agreement/document/document'
import type { PersonId } from '@/lib/units/id'
import { idSchema } from '@/lib/units/schema'
import { stamp } from '../start/clock'
import { env } from '../start/env'
import { written } from './written'

const reported = z.object({ agreement: idSchema<'agreement'>(), number: z.int() })
const headed = reported.extend({ seq: z.int(), head: hashSchema })

const letters = {
	'agreement issued': agreementIssuedLetter,
	'agreement reminder': agreementReminderLetter,
	'agreement signed': (of, facts) => agreementSignedLetter(of, headed.parse(facts)),
	'agreement declined': agreementDeclinedLetter,
	'agreement taken back': agreementTakenBackLetter,
	'agreement ended': agreementEndedLetter,
} as const satisfies Partial<Record<Leased['message'], (of: MailedAgreement, facts: unknown) => Filled>>

const questions: ReadonlySet<Leased['message']> = new Set(['agreement issued', 'agreement reminder'])

export const isAboutAgreement = (message: Leased['message']): message is keyof typeof letters => message in letters

type Mail = { readonly message: keyof typeof letters; readonly person: PersonId; readonly facts: unknown }

/** What a mail about an agreement says; undefined when there is nothing left to say: it is signed or changed by now, or its words are erased. */
export async function composeAgreement(
	system: Viewer,
	{ message, person, facts }: Mail,
	to: Addressee,
): Promise<Letter | undefined> {
	const { agreement, number } = reported.parse(facts)
	const about = await mailedAgreement(system, { agreement, number, person }, stamp())
	if (about === undefined || (questions.has(message) && !about.isWaiting)) return undefined
	const filled = letters[message](about, facts)
	const { siteUrl } = env()
	if (about.isForStudio)
		return finish(filled, to, `${siteUrl}/studio/agreements/${agreement}`, written.studio(to.studio))
	return finish(filled, to, `${siteUrl}/agreement/${agreement}?for=${to.handle}`, written.client(to.studio))
}
