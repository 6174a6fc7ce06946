import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { compared, type KnownPaper } from '@/lib/agreement/verify/compared'
import { grouped, pastedHash } from '@/lib/agreement/verify/pasted-hash'
import { comparedInWords } from '@/lib/agreement/verify/told'
import { sha256 } from '@/lib/record/hash'
import { moment } from '@/lib/units/day'

const paper: KnownPaper = {
	hash: sha256('a sealed file'),
	name: 'Agreement with Marrowby Bakery',
	sealedAt: moment(new Date('2026-11-20T15:08:00Z')),
	isPast: false,
}
const known = [{ ...paper, hash: sha256('another'), name: 'Another' }, paper]
const zone = 'America/Chicago'

describe('a hash that is pasted', () => {
	test.each([
		['as it is', paper.hash],
		['in groups, as a file prints it', grouped(paper.hash)],
		['in capitals', paper.hash.toUpperCase()],
		['over two lines, with spaces round it', ` ${paper.hash.slice(0, 30)}\r\n\t${paper.hash.slice(30)} \n`],
	])('%s', (_name, text) => {
		expect(pastedHash(text)).toBe(paper.hash)
		expect(compared(text, known)).toEqual({ is: 'known', hash: paper.hash, paper })
	})

	test.each(['', paper.hash.slice(1), `${paper.hash}0`, paper.hash.replace(/^./, 'g'), 'the agreement'])(
		'%j is none',
		(text) => {
			expect(compared(text, known)).toEqual({ is: 'no hash' })
		},
	)

	test('in whatever groups and capitals, it is read as the same', () => {
		fc.assert(
			fc.property(
				fc.uint8Array(),
				fc.array(fc.tuple(fc.nat(64), fc.constantFrom(' ', '\n', '\t', '\u00a0'))),
				(bytes, gaps) => {
					const hash = sha256(bytes)
					const text = gaps.reduce(
						(all, [place, gap]) => `${all.slice(0, place)}${gap}${all.slice(place)}`,
						hash.toUpperCase(),
					)
					expect(pastedHash(text)).toBe(hash)
				},
			),
		)
	})

	test('one digit that is another one is not known', () => {
		fc.assert(
			fc.property(fc.nat(63), (place) => {
				const digit = paper.hash[place] === '0' ? '1' : '0'
				const text = `${paper.hash.slice(0, place)}${digit}${paper.hash.slice(place + 1)}`
				expect(compared(text, known)).toEqual({ is: 'unknown', hash: text })
			}),
		)
	})
})

describe('in words', () => {
	test('a file that is known: which, when, what it shows and what not', () => {
		const told = comparedInWords(compared(paper.hash, known), zone)
		expect(told.says).toBe('Agreement with Marrowby Bakery. Sealed on 20 November 2026, 09:08.')
		expect(told.proves).toContain('Byte for byte')
		expect(told.provesNot).toContain('does not show who signed it')
	})

	test('one whose place another took says so', () => {
		const past = [{ ...paper, isPast: true }]
		expect(comparedInWords(compared(paper.hash, past), zone).says).toContain('It does not hold any more.')
	})

	test('one that is not known, and no hash, claim nothing of anybody', () => {
		const unknown = comparedInWords(compared(sha256('else'), known), zone)
		const none = comparedInWords(compared('', known), zone)
		expect(unknown.provesNot).toContain('does not show what was changed, or by whom')
		expect([none.proves, none.provesNot]).toEqual(['', ''])
		for (const told of [unknown, none]) expect(JSON.stringify(told)).not.toMatch(/Marrowby|forge|fake/)
	})
})
