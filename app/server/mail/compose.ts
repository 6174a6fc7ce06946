import 'server-only'
import { z } from 'zod'
import type { Letter } from '@/app/documents/mail/letter'
import {
	approvalReceivedLetter,
	approvedLetter,
	cancelledLetter,
	changeLetter,
	finish,
	openedAgainLetter,
	publishedLetter,
	reminderLetter,
	skippedLetter,
	takenBackLetter,
} from '@/app/documents/mail/letters'
import { phoneLetter } from '@/app/documents/mail/phone-letter'
import type { Leased } from '@/db/outbox/lease'
import { type Addressee, type MailedProposal, mailedProposal } from '@/db/outbox/mail-facts'
import type { Viewer } from '@/lib/access/viewer'
import { clientLink } from '@/lib/forms/client-link'
import { coverOf } from '@/lib/proposal/offer/cover'
import type { PersonId } from '@/lib/units/id'
import { idSchema } from '@/lib/units/schema'
import { stamp } from '../start/clock'
import { env } from '../start/env'
import { composeAgreement, isAboutAgreement } from './compose-agreement'
import { composeMoney, isAboutMoney } from './compose-money'
import { composeSignIn, isAboutSignIn } from './compose-sign-in'
import { composeVisit, isAboutVisit } from './compose-visit'
import { written } from './written'

const reported = z.object({ proposal: idSchema<'proposal'>(), number: z.int() })

const letters = {
	'proposal published': { make: publishedLetter, door: 'client' },
	reminder: { make: reminderLetter, door: 'client' },
	approved: { make: approvedLetter, door: 'client' },
	'approval received': { make: approvalReceivedLetter, door: 'studio' },
	'change asked for': { make: changeLetter, door: 'studio' },
	skipped: { make: skippedLetter, door: 'studio' },
	'opened again': { make: openedAgainLetter, door: 'client' },
	'taken back': { make: takenBackLetter, door: 'client' },
	cancelled: { make: cancelledLetter, door: 'client' },
} as const

const receipts: ReadonlySet<Leased['message']> = new Set(['approved', 'change asked for', 'skipped'])
const byPhone = { make: phoneLetter, door: 'client' } as const

/** Which letter reports it: of an answer that the studio took down its client has a receipt of another wording. */
function letterFor(message: keyof typeof letters, { answer, isForStudio }: MailedProposal) {
	return answer?.word === 'studio' && !isForStudio && receipts.has(message) ? byPhone : letters[message]
}

const isAboutProposal = (message: Leased['message']): message is keyof typeof letters => message in letters

/** What a leased mail says; undefined when there is nothing left to say: an unknown address, erased words, a question that is settled. */
export async function compose(
	system: Viewer,
	{ message, person, facts }: Leased,
	to: Addressee | undefined,
): Promise<Letter | undefined> {
	if (person === null || to === undefined) return undefined
	if (isAboutSignIn(message)) return composeSignIn({ message, person, facts }, to)
	if (isAboutVisit(message)) return composeVisit(system, { message, person, facts }, to)
	if (isAboutAgreement(message)) return composeAgreement(system, { message, person, facts }, to)
	if (isAboutMoney(message)) return composeMoney(system, { message, person, facts }, to)
	return isAboutProposal(message) ? composeProposal(system, { message, person, facts }, to) : undefined
}

type Mail = { readonly message: keyof typeof letters; readonly person: PersonId; readonly facts: unknown }

async function composeProposal(
	system: Viewer,
	{ message, person, facts }: Mail,
	to: Addressee,
): Promise<Letter | undefined> {
	const { proposal, number } = reported.parse(facts)
	const about = await mailedProposal(system, { proposal, number, person }, stamp())
	const isQuestion = message === 'proposal published' || message === 'reminder'
	if (about === undefined || (isQuestion && !about.isWaiting)) return undefined
	if (message === 'opened again' && !about.isStanding) return undefined
	const { make, door } = letterFor(message, about)
	const { siteUrl } = env()
	if (door === 'studio')
		return finish(make(about), to, `${siteUrl}/studio/proposal/${proposal}`, written.studio(to.studio))
	const href = `${siteUrl}${clientLink({ proposal, handle: to.handle, coverKey: about.coverKey })}`
	const cover = isQuestion && about.coverKey !== null ? { cover: coverOf(about.offer) } : {}
	return { ...finish(make(about), to, href, written.client(to.studio)), ...cover }
}
