import { readAgreement } from '@/db/agreements/read'
import { agreeToRecords } from '@/db/agreements/signing/consent'
import { declineAgreement } from '@/db/agreements/signing/decline'
import { markOpened } from '@/db/agreements/signing/open'
import { signAgreement } from '@/db/agreements/signing/sign'
import { sessionAdapter } from '@/db/sign-in/adapter'
import type { Stamp } from '@/db/stamp'
import { viewerOf } from '@/db/viewer'
import { consentFor, consentHash } from '@/lib/agreement/signing/consent'
import { defaultConsent } from '@/lib/agreement/signing/default-consent'
import type { Id } from '@/lib/units/id'
import { type PersonKey, people } from '../../cast/people'
import { staff } from '../../cast/studio'
import { must } from '../must'
import type { Stage } from '../stage'

type By = {
	readonly stage: Stage
	readonly agreement: Id<'agreement'>
	readonly person: PersonKey
	readonly stamp: Stamp
}

const browser = 'the play'
/** For documentation (RFC 5737). */
const sender = '192.0.2.14'

async function before({ stage, agreement, person, stamp }: By) {
	const contact = await viewerOf(stage.people.of(person))
	const page = await readAgreement(contact, agreement, stamp)
	if (page?.document === undefined) throw new Error(`${person} finds no agreement`)
	return { contact, document: page.hash, text: page.document }
}

export async function opened({ stage, agreement, person, stamp }: By): Promise<void> {
	await markOpened(await viewerOf(stage.people.of(person)), { agreement, as: 'page' }, stamp)
}

/** In a session that begins for it by a link, and ends with it. */
export async function signed(by: By): Promise<void> {
	const { stage, agreement, person, stamp } = by
	const { contact, document, text } = await before(by)
	const writeTo = staff.designer.address
	const shown = consentFor(defaultConsent, { studio: text.studio.name, client: text.client.name, writeTo })
	const consenting = { agreement, document, once: stamp.id<'once'>(), words: consentHash(shown), writeTo }
	must(person, await agreeToRecords(contact, consenting, stamp))
	const sessions = sessionAdapter(() => new Date(stamp.at), undefined, 'link')
	const token = stamp.id<'session'>()
	await sessions.createSession({ sessionToken: token, userId: stage.people.of(person) })
	const given = { name: people[person].name, stroke: null, token, sender, browser }
	must(person, await signAgreement(contact, { agreement, document, once: stamp.id<'once'>(), ...given }, stamp))
	await sessions.deleteSession(token)
}

export async function declined(by: By, reason: string): Promise<void> {
	const { contact, document } = await before(by)
	const declining = { agreement: by.agreement, document, once: by.stamp.id<'once'>(), browser, reason }
	must(by.person, await declineAgreement(contact, declining, by.stamp))
}
