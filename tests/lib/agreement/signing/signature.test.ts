import { describe, expect, test } from 'vitest'
import { documentHash } from '@/lib/agreement/document/document'
import { consentFor, consentHash } from '@/lib/agreement/signing/consent'
import { defaultConsent } from '@/lib/agreement/signing/default-consent'
import { type Signature, signatureSchema } from '@/lib/agreement/signing/signature'
import { canonical } from '@/lib/record/canonical'
import { sha256 } from '@/lib/record/hash'
import { day, moment } from '@/lib/units/day'
import { issued } from '../document/issued'
import { agreementId, clientId, personId } from '../sample'

const at = (minutes: number) => moment(new Date(Date.UTC(2026, 10, 20, 9, minutes)))
const shown = consentFor(defaultConsent, {
	...{ studio: 'Thornapple Studio', writeTo: 'ada@thornapple.example', client: 'Marrowby Bakery' },
})
const to = { v: 1, agreement: agreementId, document: documentHash(issued()) } as const

const onScreen: Extract<Signature, { is: 'on a screen' }> = {
	...to,
	is: 'on a screen',
	client: clientId,
	person: personId(1),
	typedName: 'Maud Marrowby',
	stroke: [
		[
			[10, 200],
			[990, 180],
		],
	],
	proven: { address: 'maud@marrowbybakery.example', by: 'code', at: at(1) },
	opened: [
		{ as: 'page', at: at(2) },
		{ as: 'PDF', at: at(4) },
	],
	consent: { version: 1, hash: consentHash(shown), at: at(5) },
	intent: shown.intends,
	signedAt: at(6),
	sender: '203.0.113.7',
	browser: 'Safari on an iPhone',
}
const onPaper: Signature = {
	...{ ...to, is: 'on paper', client: clientId, signer: 'Hew Marrowby', signedOn: day('2026-11-20') },
	...{ scan: sha256('a picture'), recordedBy: personId(2), recordedAt: at(30) },
}
const byStudio: Signature = { ...to, is: 'by the studio', person: personId(2), name: 'Ada Wrenfield', signedAt: at(0) }

test.each([onScreen, { ...onScreen, stroke: null, sender: '2001:db8::7' }, onPaper, byStudio])(
	'$is: read back from its own JSON, the same to the letter',
	(signature) => {
		const text = canonical(signature)
		const back = signatureSchema.parse(JSON.parse(text))
		expect(back).toEqual(signature)
		expect(canonical(back)).toBe(text)
	},
)

test.each(['نور الهدى', '李小龍', 'Žofie Černá-O’Shea', 'Đặng Thị Thu'])(
	'a name in its own script: %s',
	(typedName) => {
		expect(signatureSchema.parse({ ...onScreen, typedName })).toMatchObject({ typedName })
	},
)

describe('what is none', () => {
	const { intent: _, ...withoutIntent } = onScreen
	const { consent: __, ...withoutConsent } = onScreen
	test.each<[string, object]>([
		['an empty name', { ...onScreen, typedName: ' ' }],
		['a name of 10,000 characters', { ...onScreen, typedName: 'a'.repeat(10_000) }],
		['a name of two lines', { ...onScreen, typedName: 'Maud\nMarrowby' }],
		['a name that turns the order about', { ...onScreen, typedName: 'Maud\u202eybworraM' }],
		['a name with a control character', { ...onScreen, typedName: 'Maud\u0000' }],
		['no intent', withoutIntent],
		['no consent', withoutConsent],
		['consent of nobody knows when', { ...onScreen, consent: { ...onScreen.consent, at: null } }],
		['never opened', { ...onScreen, opened: [] }],
		['opened after the consent alone', { ...onScreen, opened: [{ as: 'PDF', at: at(6) }] }],
		['signed before the consent', { ...onScreen, signedAt: at(4), proven: { ...onScreen.proven, at: at(0) } }],
		['signed before the address was proven', { ...onScreen, proven: { ...onScreen.proven, at: at(7) } }],
		['no proof of the address', { ...onScreen, proven: { ...onScreen.proven, by: 'phone' } }],
		['no address', { ...onScreen, proven: { ...onScreen.proven, address: 'maud' } }],
		['a document without a hash', { ...onScreen, document: 'the agreement' }],
		['a sender that is no address', { ...onScreen, sender: '203.0.113.700' }],
		['a word beside it', { ...onScreen, note: 'called her' }],
		['a stroke of too many points', { ...onScreen, stroke: Array(9).fill(Array(500).fill([1, 1])) }],
		['a stroke outside its field', { ...onScreen, stroke: [[[1001, 1]]] }],
		['an empty stroke', { ...onScreen, stroke: [] }],
		['paper without a picture', { ...onPaper, scan: '' }],
		['paper with what a screen has', { ...onPaper, consent: onScreen.consent }],
		['the studio for a client', { ...byStudio, client: clientId }],
	])('%s', (_name, signature) => {
		expect(signatureSchema.safeParse(signature).success).toBe(false)
	})

	test('while the most that a stroke can have is one', () => {
		const stroke = Array(8).fill(Array(500).fill([1000, 400]))
		expect(signatureSchema.safeParse({ ...onScreen, stroke }).success).toBe(true)
	})
})
