import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { looksFor } from '@/lib/format/look-for'

const bakery = ['Marrowby Bakery', 'Front of the shop', '3 Quay Row', 'Maud Marrowby', 'maud@marrowbybakery.example']

describe('a client is found', () => {
	test.each([
		['by name', 'bakery'],
		['in capitals', 'MARROWBY'],
		['by a part of a word', 'arrow'],
		['by words in any order', 'quay maud'],
		['by a mail address', 'maud@marrowby'],
		['where accents are typed that are not there', 'Bäkéry'],
		['by no word at all', ' \t '],
	])('%s', (_, words) => {
		expect(looksFor(words)(bakery)).toBe(true)
	})

	test.each([
		['by a word that stands nowhere', 'marrowby inn'],
		['by two texts run together', 'bakeryfront'],
	])('but not %s', (_, words) => {
		expect(looksFor(words)(bakery)).toBe(false)
	})

	test.each([
		['Søren Łukasz', 'soren lukasz'],
		['Café Æbleskiver', 'CAFE AEBLE'],
		['Straße', 'STRASSE'],
		['Ｆｕｌｌ width', 'full'],
		['İzmir', 'izmir'],
		['O’Dell', "o'dell"],
		['e\u0301cole', 'école'],
	])('%s by %s', (text, words) => {
		expect(looksFor(words)([text])).toBe(true)
	})

	test('by any word of any of its texts, and by more words never more often', () => {
		const texts = fc.array(fc.string({ unit: 'grapheme' }), { minLength: 1, maxLength: 4 })
		fc.assert(
			fc.property(texts, fc.nat(), fc.string({ unit: 'grapheme' }), (all, at, more) => {
				const words = all.join(' ').split(/\s+/)
				const word = words[at % words.length] ?? ''
				expect(looksFor(word)(all)).toBe(true)
				if (looksFor(`${word} ${more}`)(all)) expect(looksFor(more)(all)).toBe(true)
			}),
		)
	})
})
