import type { AgreementPaper, Signed } from '@/app/documents/pdf/agreement/input'
import { type AgreementDocument, documentHash } from '@/lib/agreement/document/document'
import { type Consent, consentFor, consentHash } from '@/lib/agreement/signing/consent'
import { defaultConsent } from '@/lib/agreement/signing/default-consent'
import type { Signature } from '@/lib/agreement/signing/signature'
import { sha256 } from '@/lib/record/hash'
import { moment } from '@/lib/units/day'
import { issued } from '../../lib/agreement/document/issued'
import { agreementId, clientId, personId } from '../../lib/agreement/sample'

export const at = (minutes: number) => moment(new Date(Date.UTC(2026, 10, 20, 15, minutes, 7)))
export const shown: Consent = consentFor(defaultConsent, {
	...{ studio: 'Thornapple Studio', writeTo: 'ada@thornapple.example', client: 'Marrowby Bakery' },
})

/** A hand of our own, as lines of points. */
export const stroke = [
	Array.from({ length: 60 }, (_, n): [number, number] => [
		80 + n * 13,
		Math.round(200 + 90 * Math.sin(n / 3) * Math.cos(n / 11)),
	]),
	[[900, 90] satisfies [number, number]],
]

export const byClient = (document: AgreementDocument, typedName = 'Maud Marrowby'): Signature => ({
	...{ v: 1, agreement: agreementId, document: documentHash(document), is: 'on a screen', client: clientId },
	...{ person: personId(1), typedName, stroke, intent: shown.intends, signedAt: at(6) },
	proven: { address: 'maud@marrowbybakery.example', by: 'code', at: at(1) },
	opened: [
		{ as: 'page', at: at(2) },
		{ as: 'PDF', at: at(4) },
	],
	consent: { version: 1, hash: consentHash(shown), at: at(5) },
	sender: '203.0.113.7',
	browser: 'Safari on an iPhone',
})

export const byStudio = (document: AgreementDocument, name = 'Ada Wrenfield'): Signature => ({
	...{ v: 1, agreement: agreementId, document: documentHash(document), is: 'by the studio' },
	...{ person: personId(2), name, signedAt: at(0) },
})

export const signed = (document: AgreementDocument, name?: string): Signed => ({
	signatures: [byStudio(document), byClient(document, name)],
	consent: shown,
	head: { seq: 412, hash: sha256('the line before') },
})

export function paper(document = issued(), its: Partial<AgreementPaper> = {}): AgreementPaper {
	const made = { at: at(7), timeZone: 'America/Chicago', paper: 'LETTER' } as const
	return { document, signed: signed(document), ...made, ...its }
}
