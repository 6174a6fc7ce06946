import { expect, test } from 'vitest'
import { streetOf, streetWord } from '@/lib/proposal/design/around/street'

const isSameStreet = (a: string, b: string) => streetOf(a) !== null && streetOf(a) === streetOf(b)
/** As the database looks for a word in it. */
const plain = (address: string) => address.toLowerCase().replaceAll(/[.’']/g, '')

test.each([
	['27 Tern Lane, Wrenholt', '33 Tern Lane, Wrenholt'],
	['27 Tern Lane, Wrenholt', '33B tern ln., WRENHOLT'],
	['4–6 Chandler’s Row\nSuite 2\nWrenholt', '19 Chandlers Row, Wrenholt'],
	['Marrowby Bakery\n4 Saint Anne Street\nWrenholt', '9 Saint Anne St, Wrenholt'],
	['3 Quay Row', '7 Quay Row'],
])('%j and %j are in one street', (one, other) => {
	expect(isSameStreet(one, other)).toBe(true)
	expect(isSameStreet(other, one)).toBe(true)
	expect(plain(other)).toContain(streetWord(one) ?? 'a word')
	expect(plain(one)).toContain(streetWord(other) ?? 'a word')
})

test.each([
	['another street', '27 Tern Lane, Wrenholt', '27 Kelp Road, Wrenholt'],
	['the same name in another town', '3 Orchard Bend, Wrenholt', '5 Orchard Bend, Nether Wrenholt'],
	['a lane and a street of one name', '27 Tern Lane, Wrenholt', '33 Tern Street, Wrenholt'],
	['no house number', 'Old Customs House, Wrenholt', 'Old Customs House, Wrenholt'],
	['nothing', '', ''],
])('not with %s', (_, one, other) => expect(isSameStreet(one, other)).toBe(false))

test.each([
	['27 Tern Lane, Wrenholt', 'tern'],
	['12 Old Harbour Street, Wrenholt', 'harbour'],
	['4 O’Brien’s Court', 'obriens'],
	['9 Court Lane', null],
	['5 Żurawia', null],
	['Old Customs House', null],
	['', null],
])('%j is known by the word %j', (address, word) => expect(streetWord(address)).toBe(word))
