import { describe, expect, test } from 'vitest'
import { approveForm, changeForm, skipForm } from '@/lib/forms/answer/answer-form'
import { read } from '@/lib/forms/read'
import { changeParts } from '@/lib/proposal/offer/parts'
import { sha256 } from '@/lib/record/hash'
import { offerOf } from '../proposal/sample'

const uuid = (n: number) => `00000000-0000-7000-8000-00000000b${String(n).padStart(3, '0')}`
const revision = sha256('revision two')
const approval = {
	once: uuid(1),
	revision,
	option: 'b',
	place: [`${uuid(4)} a`],
	extra: ['wreath'],
	without: [uuid(2)],
	purchaseOrder: ' PO 77 ',
}
const wish = { once: uuid(3), revision, about: ['whole', 'option b'], note: ['', ' lower, please\r\n'] }

const errorsOf = (result: ReturnType<typeof read>) => (result.ok ? {} : result.errors)

describe('an approval', () => {
	test('names its revision, a palette, extras and what is left out', () => {
		expect(read(approveForm, approval)).toEqual({
			ok: true,
			value: { ...approval, place: { [uuid(4)]: 'a' }, purchaseOrder: 'PO 77' },
		})
	})

	test.each([
		{ name: 'a total', more: { totalCents: '1' } },
		{ name: 'a client', more: { client: uuid(9) } },
		{ name: 'a price by another name', more: { price: '0.01' } },
		{ name: 'a state', more: { state: 'approved' } },
	])('carries no $name', ({ more }) => {
		expect(errorsOf(read(approveForm, { ...approval, ...more }))).toEqual({
			form: expect.stringContaining('Unrecognized key'),
		})
	})

	test.each([
		{ name: 'no palette picked', more: { option: undefined }, says: { option: 'Choose a palette first.' } },
		{ name: 'an empty palette', more: { option: '' }, says: { option: 'Choose a palette first.' } },
		{
			name: 'a hash that is none',
			more: { revision: revision.toUpperCase() },
			says: { revision: 'This form does not say which revision it answers. Open the design again.' },
		},
		{
			name: 'a place by name',
			more: { place: ['Boathouse a'] },
			says: { 'place.0': 'One of the palettes names no place. Go back to the design and choose again.' },
		},
		{
			name: 'a place without a palette',
			more: { place: [uuid(4)] },
			says: { 'place.0': 'One of the palettes names no place. Go back to the design and choose again.' },
		},
		{
			name: 'the same place twice',
			more: { place: [`${uuid(4)} a`, `${uuid(4)} b`] },
			says: { place: 'A place is named twice. Go back to the design and choose again.' },
		},
		{
			name: 'a container by name',
			more: { without: ['left urn'] },
			says: { 'without.0': 'This names nothing that is known here.' },
		},
		{
			name: 'an order number of two lines',
			more: { purchaseOrder: 'PO 77\nPO 78' },
			says: { purchaseOrder: 'Keep this on one line.' },
		},
		{
			name: 'an order number too long',
			more: { purchaseOrder: '7'.repeat(41) },
			says: { purchaseOrder: 'Keep this to 40 characters.' },
		},
		{ name: 'no once-key', more: { once: 'again' }, says: { once: 'This names nothing that is known here.' } },
	])('$name is refused', ({ more, says }) => {
		expect(errorsOf(read(approveForm, { ...approval, ...more }))).toEqual(says)
	})
})

describe('a change asked for', () => {
	test('keeps the notes that hold words, each with the part that it is about', () => {
		const result = read(changeForm, wish)
		expect(result.ok && result.value).toEqual({
			once: uuid(3),
			revision,
			notes: [{ part: 'option b', words: 'lower, please' }],
		})
	})

	test.each([
		{ name: 'all empty', note: ['', ''] },
		{ name: 'all blank', note: [' \n\t', '\u00a0'] },
		{ name: 'none sent', note: [] },
	])('is refused when its notes are $name', ({ note }) => {
		expect(errorsOf(read(changeForm, { ...wish, note }))).toEqual({
			note: 'Write what you would like to be different.',
		})
	})

	test('is refused when it is about nothing', () => {
		expect(errorsOf(read(changeForm, { ...wish, about: [] }))).toEqual({
			note: 'Write what you would like to be different.',
		})
	})

	test('a note too long is told where it stands', () => {
		expect(errorsOf(read(changeForm, { ...wish, note: ['lower', 'a'.repeat(1001)] }))).toEqual({
			'note.1': 'Keep this to 1000 characters.',
		})
	})

	test('carries no price', () => {
		expect(read(changeForm, { ...wish, totalCents: '1' }).ok).toBe(false)
	})

	test('may be about every part of the largest design that a draft can hold', () => {
		const { containers, options, extras, ...rest } = offerOf()
		const many = <T>(count: number, of: readonly T[]) =>
			Array.from({ length: count }, () => of)
				.flat()
				.slice(0, count)
		const largest = { ...rest, containers: many(60, containers), options: many(4, options), extras: many(20, extras) }
		const about = changeParts(largest).map(({ key }) => key)
		expect(about).toHaveLength(85)
		expect(read(changeForm, { ...wish, about, note: about.map(() => 'lower') }).ok).toBe(true)
	})
})

describe('a season skipped', () => {
	const skip = { once: uuid(4), revision, why: ' We are building.\r\nNext year! ' }

	test('may say why', () => {
		expect(read(skipForm, skip)).toEqual({ ok: true, value: { ...skip, why: 'We are building.\nNext year!' } })
		expect(read(skipForm, { ...skip, why: '' }).ok).toBe(true)
	})

	test('carries nothing else', () => {
		expect(read(skipForm, { ...skip, option: 'a' }).ok).toBe(false)
		expect(read(skipForm, { once: uuid(4), revision }).ok).toBe(false)
	})
})
