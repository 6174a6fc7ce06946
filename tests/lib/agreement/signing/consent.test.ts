import { expect, test } from 'vitest'
import { consentFor, consentHash, consentSchema } from '@/lib/agreement/signing/consent'
import { defaultConsent } from '@/lib/agreement/signing/default-consent'

const facts = { studio: 'Thornapple Studio', writeTo: 'ada@thornapple.example', client: 'Marrowby Bakery' }
const shown = consentFor(defaultConsent, facts)
const all = (of = shown) => [...of.points.flatMap(({ title, says }) => [title, says]), of.agrees, of.intends].join('\n')

test('can be stored, filled or not', () => {
	expect(consentSchema.parse(defaultConsent)).toEqual(defaultConsent)
	expect(consentSchema.parse(shown)).toEqual(shown)
})

test('is shown with no blank left, and with the client’s own words as they are', () => {
	expect(all()).not.toMatch(/[{}]/)
	expect(shown.intends).toContain('for Marrowby Bakery by typing my name')
	expect(consentFor(defaultConsent, { ...facts, client: '{studio} $&' }).intends).toContain('for {studio} $& by typing')
})

test('what was shown is known by its hash', () => {
	expect(consentHash(consentFor(defaultConsent, facts))).toBe(consentHash(shown))
	const others = [defaultConsent, consentFor(defaultConsent, { ...facts, writeTo: 'desk@thornapple.example' })]
	expect(new Set([shown, ...others].map(consentHash)).size).toBe(3)
})

test('each point once', () => {
	const keys = defaultConsent.points.map(({ key }) => key)
	expect(new Set(keys).size).toBe(keys.length)
})

test('the consent and the signature are two sentences, and the consent signs nothing', () => {
	expect(shown.agrees).not.toMatch(/\bsign\b/)
	expect(shown.intends).not.toMatch(/records/)
})
