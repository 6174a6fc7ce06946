import fc from 'fast-check'
import { afterEach, describe, expect, test, vi } from 'vitest'
import { paperOf } from '@/app/documents/pdf/paper'
import { agreementPdf } from '@/app/server/pdf/agreement'
import { type AgreementDocument, documentHash } from '@/lib/agreement/document/document'
import { makeDocument } from '@/lib/agreement/document/make'
import { dueInWords } from '@/lib/agreement/instalment/words'
import { consentHash } from '@/lib/agreement/signing/consent'
import type { Signature } from '@/lib/agreement/signing/signature'
import { defaultTemplate } from '@/lib/agreement/template/default-template'
import { proves, provesNot } from '@/lib/agreement/verify/proves'
import { moneyFormat } from '@/lib/format/money'
import { capital } from '@/lib/format/words'
import { sha256 } from '@/lib/record/hash'
import { seasonName } from '@/lib/season/season'
import { day } from '@/lib/units/day'
import { firstIssue, issued } from '../../lib/agreement/document/issued'
import { agreementId, anyPlan, anySeason, clientId, facts, personId, placeId, terms } from '../../lib/agreement/sample'
import { at, byClient, byStudio, paper, shown, signed, stroke } from './sample'
import { bare, pagesOf } from './text'

/** The renderer says on the console what it could not lay out. */
const complaints = vi.spyOn(console, 'warn')
afterEach(() => {
	expect(complaints.mock.calls).toEqual([])
	complaints.mockClear()
})

const money = moneyFormat('USD')
const textOf = async (...input: Parameters<typeof paper>) => pagesOf(await agreementPdf(paper(...input)))
const whole = async (...input: Parameters<typeof paper>) => bare((await textOf(...input)).join(''))

describe('the file of an agreement', () => {
	test('is the same bytes for the same input, and others for another moment, hour or paper', async () => {
		const first = await agreementPdf(paper())
		expect((await agreementPdf(paper())).equals(first)).toBe(true)
		const others = [{ at: at(8) }, { timeZone: 'Europe/Dublin' }, { paper: 'A4' }] as const
		for (const its of others) expect((await agreementPdf(paper(issued(), its))).equals(first)).toBe(false)
	})

	test('two that are asked for at once do not get into each other', async () => {
		const [signedOne, copy, again] = await Promise.all([
			agreementPdf(paper()),
			agreementPdf(paper(issued(), { signed: null })),
			agreementPdf(paper()),
		])
		expect(again.equals(signedOne)).toBe(true)
		expect(copy.equals(signedOne)).toBe(false)
	})

	test('is on the paper of the country', () => {
		expect([paperOf('in'), paperOf('cm')]).toEqual(['LETTER', 'A4'])
	})

	test('has every clause, season, place, container and instalment, and the sum', async () => {
		const document = issued()
		const text = await whole(document)
		for (const { title, text: says } of document.clauses)
			expect(text).toContain(bare(says) && bare(title) && bare(says))
		for (const season of document.seasons) expect(text).toContain(bare(capital(seasonName(season))))
		for (const { name, words } of document.containers) expect(text).toContain(bare(`${name} (${words})`))
		for (const { name, address } of document.places) expect(text).toContain(bare(name + address))
		for (const { cents, due } of document.instalments)
			expect(text).toContain(bare(capital(dueInWords(due)) + money(cents)))
		expect(text).toContain(bare(`Instalments together${money(document.totalCents)}`))
	})

	test('says on each page which text it is, and of how many pages', async () => {
		const pages = await pagesOf(await agreementPdf(paper()), { withFoot: true })
		for (const [index, page] of pages.entries()) {
			expect(page).toContain(`hash of the text ${documentHash(issued()).slice(0, 8)}`)
			expect(page).toContain(`${index + 1} of ${pages.length}`)
		}
	})
})

describe('a copy for reading', () => {
	test('says on each page that it is not signed, and has no record and no signature', async () => {
		const pages = await textOf(issued(), { signed: null })
		expect(pages.length).toBeGreaterThan(2)
		for (const page of pages) expect(page).toContain('Not signed. A copy for reading.')
		expect(pages.join('')).not.toMatch(/record of the signing|Signatures|Electronic records/)
	})

	test('while a signed one says nothing of it', async () => {
		expect((await textOf()).join('')).not.toContain('Not signed')
	})
})

describe('the record of the signing, on the last page', () => {
	test('has all that is kept of a signature on a screen, by both clocks', async () => {
		const document = issued()
		const last = bare((await textOf(document)).at(-1) ?? '')
		const says = [
			...[documentHash(document), agreementId, 'Ada Wrenfield', 'Maud Marrowby', shown.intends],
			...['maud@marrowbybakery.example', 'by typing a code that was sent there'],
			...['as a page, 2026-11-20 15:02:07 UTC', 'as a PDF, 2026-11-20 15:04:07 UTC'],
			...['2026-11-20 15:06:07 UTC (20 November 2026, 09:06 in America/Chicago)'],
			...['version 1 of the words', consentHash(shown), '203.0.113.7, with Safari on an iPhone'],
			...['412', sha256('the line before'), ...proves, ...provesNot],
		]
		for (const each of says) expect(last).toContain(bare(each))
	})

	test('before it stand the words that were agreed to, as they were shown', async () => {
		const before = bare((await textOf()).slice(0, -1).join(''))
		for (const { title, says } of shown.points) expect(before).toContain(bare(title + says))
		for (const each of [shown.agrees, shown.intends]) expect(before).toContain(bare(each))
	})

	test('has a signature on paper by the hash of its picture, and no words that were not shown', async () => {
		const document = issued()
		const onPaper: Signature = {
			...{ v: 1, agreement: agreementId, document: documentHash(document), is: 'on paper', client: clientId },
			...{ signer: 'Hew Marrowby', signedOn: day('2026-11-18'), scan: sha256('a picture') },
			...{ recordedBy: personId(2), recordedAt: at(5) },
		}
		const signatures = [byStudio(document), onPaper]
		const pages = await textOf(document, { signed: { ...signed(document), signatures, consent: null } })
		const last = bare(pages.at(-1) ?? '')
		for (const each of ['Hew Marrowby', '18 November 2026', sha256('a picture'), `by person ${personId(2)}`])
			expect(last).toContain(bare(each))
		expect(pages.join('')).not.toContain('electronic records, as they were shown')
	})

	test('a stroke is drawn, and only where there is one', async () => {
		const document = issued()
		const client = byClient(document)
		const without: Signature = client.is === 'on a screen' ? { ...client, stroke: null } : client
		const drawn = await agreementPdf(paper())
		const bare = await agreementPdf(paper(document, { signed: { ...signed(document), signatures: [without] } }))
		expect(stroke.flat().length).toBeGreaterThan(50)
		expect(drawn.length).toBeGreaterThan(bare.length)
	})
})

const letters = 'abcdefghijklmnopqrstuvwxyzäéłőşžđАБбЯΑΩω0123456789.,;:’“”()–'
const word = fc.string({ unit: fc.constantFrom(...letters), minLength: 1, maxLength: 14 })
const sentences = fc.array(word, { minLength: 1, maxLength: 60 }).map((all) => all.join(' '))
const clause = fc.record({
	title: sentences.map((text) => text.slice(0, 60)),
	text: fc.array(sentences, { minLength: 1, maxLength: 5 }).map((all) => all.join('\n\n')),
})
const seasons = fc
	.uniqueArray(anySeason, { selector: seasonName, minLength: 1, maxLength: 5 })
	.map((all) => all.map((season) => ({ ...season, visits: [{ kind: 'install', count: 2 } as const] })))
/** Whatever can be issued, with clauses of its own. */
const documents: fc.Arbitrary<AgreementDocument> = fc
	.record({ seasons, plan: anyPlan, clauses: fc.array(clause, { minLength: 1, maxLength: 12 }) })
	.chain(({ seasons: its, plan, clauses }) => {
		const made = makeDocument({ ...terms, seasons: its, plan }, facts, defaultTemplate, firstIssue)
		const own = clauses.map((each, at) => ({ ...each, key: `clause-${at}` }))
		return fc.constant(made.ok ? { ...made.document, clauses: own } : null)
	})
	.filter((document) => document !== null)

describe('whatever was agreed', () => {
	test('every clause, season, instalment and the total come out of the file', async () => {
		await fc.assert(
			fc.asyncProperty(documents, async (document) => {
				const text = await whole(document)
				for (const each of document.clauses) {
					expect(text).toContain(bare(each.title))
					expect(text).toContain(bare(each.text))
				}
				for (const season of document.seasons) expect(text).toContain(bare(capital(seasonName(season))))
				for (const { cents, due } of document.instalments)
					expect(text).toContain(bare(capital(dueInWords(due)) + money(cents)))
				expect(text).toContain(bare(`before tax${money(document.totalCents)}`))
			}),
			{ numRuns: 10 },
		)
	})
})

describe('what is too long for a page', () => {
	/** No two parts of it are alike, so that none can be lost unseen. */
	const long = Array.from({ length: 1250 }, (_, n) => `m${String(n).padStart(5, '0')}by`).join('')

	test.each([
		['a client’s name of 10,000 letters', { ...facts, client: { ...facts.client, name: long } }],
		['a studio’s', { ...facts, studio: { ...facts.studio, name: long } }],
		[
			'an address',
			{ ...facts, places: [{ id: placeId(1), name: 'Shop door', address: long }, ...facts.places.slice(1)] },
		],
		['a container’s name', { ...facts, containers: facts.containers.map((each) => ({ ...each, name: long })) }],
	])('%s: goes on over pages, whole', async (_name, known) => {
		const document = issued(terms, known)
		const pages = await textOf(document)
		expect(bare(pages.join(''))).toContain(long)
		expect(bare(pages.at(-1) ?? '')).toContain(bare(provesNot[0]))
	})
})
