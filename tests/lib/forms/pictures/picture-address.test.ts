import { describe, expect, test } from 'vitest'
import { pictureQuery, readPictureQuery } from '@/lib/forms/pictures/picture-address'

const id = '00000000-0000-7000-8000-00000000a001'
const asked = {
	cut: 'wide',
	place: id,
	option: 'a',
	extras: ['lights', 'x2'],
	leftOut: ['00000000-0000-7000-8000-00000000c002'],
	hour: 'evening',
	measure: 'in',
} as const

describe('the address of a picture', () => {
	test('reads back what it was made of', () => {
		expect(readPictureQuery(new URLSearchParams(pictureQuery(asked)))).toEqual(asked)
		const bare = { ...asked, place: '', option: null, extras: [], leftOut: [] }
		expect(readPictureQuery(new URLSearchParams(pictureQuery(bare)))).toEqual(bare)
	})

	test('of nothing is the first place by day', () => {
		const first = { cut: 'full', place: '', option: null, extras: [], leftOut: [], hour: 'day', measure: 'none' }
		expect(readPictureQuery(new URLSearchParams())).toEqual(first)
	})

	test.each([
		['a cut that nobody makes', 'cut=poster'],
		['an hour of its own', 'hour=noon'],
		['a place that is no id', 'place=..%2F..%2Fstudio'],
		['an option without end', `option=${'a'.repeat(41)}`],
		['a measure in ells', 'measure=ell'],
		['extras without end', Array.from({ length: 61 }, () => 'extra=a').join('&')],
	])('refuses %s', (_, query) => {
		expect(readPictureQuery(new URLSearchParams(query))).toBeUndefined()
	})
})
