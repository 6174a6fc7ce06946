import { describe, expect, test } from 'vitest'
import { drawing } from '@/app/documents/pdf/drawing'
import { agreementPdf } from '@/app/server/pdf/agreement'
import { letters } from '@/app/server/pdf/letters'
import { issued } from '../../lib/agreement/document/issued'
import { facts, terms } from '../../lib/agreement/sample'
import { hardNames } from './hard-names'
import { paper, signed } from './sample'
import { pagesOf } from './text'

const clientNamed = (name: string) => issued(terms, { ...facts, client: { ...facts.client, name } })
async function linesFor(name: string) {
	const document = clientNamed(name)
	const pages = await pagesOf(await agreementPdf(paper(document, { signed: signed(document, name) })))
	return { first: (pages[0] ?? '').split('\n'), last: (pages.at(-1) ?? '').split('\n'), all: pages.join('\n') }
}

describe('names that the letters hold', () => {
	test.each(hardNames)('%s', async (name) => {
		const { first, last, all } = await linesFor(name)
		expect(first).toContain(name)
		expect(last).toContain(`Name, as typed ${name}`)
		expect(all).not.toContain('□')
		expect(all).not.toContain('stands for a sign that the letters of this file lack')
	})
})

test('no file changes what another one holds', async () => {
	const sheets = [...hardNames, 'Zoe z. y', 'ffi fl', 'Nan'].map((name) => paper(clientNamed(name), { signed: null }))
	const first = await Promise.all(sheets.map(agreementPdf))
	const again = await Promise.all(sheets.toReversed().map(agreementPdf))
	expect(again.reverse().map((bytes, at) => first[at]?.equals(bytes))).toEqual(sheets.map(() => true))
})

// Code points by the Unicode Standard's charts: Han, Devanagari, Thai, Hangul, an emoji with a tone and a joiner.
describe('names that they lack are drawn as boxes, one a sign, and told by their code points', () => {
	test.each([
		['李小龍', '□□□', 'U+674E U+5C0F U+9F8D'],
		['दिव्या', '□□', 'U+0926 U+093F U+0935 U+094D U+092F U+093E'],
		['ก้าน', '□□□', 'U+0E01 U+0E49 U+0E32 U+0E19'],
		['김하늘', '□□□', 'U+AE40 U+D558 U+B298'],
		['Nan 👩🏽‍🌾', 'Nan □', 'U+004E U+0061 U+006E U+0020 U+1F469 U+1F3FD U+200D U+1F33E'],
	])('%s', async (name, boxes, points) => {
		const { first, last } = await linesFor(name)
		expect(first).toContain(boxes)
		expect(last.join(' ')).toContain(`Name, as typed ${boxes} (${points})`)
		expect(last.join(' ')).toContain('□ stands for a sign that the letters of this file lack.')
	})
})

describe('signs that are not seen', () => {
	const draw = async () => drawing(await letters())

	test('a line of words in letters of ours is left as it is', async () => {
		const { sayWhole, hasReplaced } = await draw()
		expect(sayWhole('Nell Quirke')).toBe('Nell Quirke')
		expect(hasReplaced()).toBe(false)
	})

	test.each([
		['a mark that turns the order about', 'Maud\u202eybworraM', 'Maud□ybworraM'],
		['an isolate', 'a\u2066b\u2069', 'a□b□'],
		['a control character', 'Maud\u0000\u001b[31m', 'Maud□□[31m'],
		['half a pair', 'a\ud800b', 'a□b'],
		['a sign of nobody’s', 'a\ue000\uffffb', 'a□□b'],
		['a soft hyphen, which would vanish', 'Quir\u00adke', 'Quir□ke'],
	])('%s becomes a box', async (_name, text, said) => {
		const { say, sayWhole } = await draw()
		expect(say(text)).toBe(said)
		expect(sayWhole(text)).toMatch(/ \(U\+[0-9A-F]{4}.*\)$/)
	})

	test.each([
		['a joiner between letters that need it', 'می\u200cخواهم', 'می\u200cخواهم'],
		['spaces that are not broken', '10\u00a0000\u202fkg', '10 000 kg'],
		['an accent apart is put on its letter', 'Zoe\u0308', 'Zoë'],
		['ends of lines', 'a\r\nb\nc', 'a\nb\nc'],
	])('%s', async (_name, text, said) => {
		expect((await draw()).say(text)).toBe(said)
	})
})
