import { describe, expect, test } from 'vitest'
import { materialForm } from '@/lib/forms/catalogue/material-form'
import { read } from '@/lib/forms/read'

const uuid = (n: number) => `00000000-0000-7000-8000-00000000e${String(n).padStart(3, '0')}`
const fir = {
	once: uuid(1),
	material: '',
	name: 'Noble fir',
	kind: 'fresh',
	piece: 'green',
	role: 'filler',
	unit: 'kg',
	piecesPerUnit: '22.5',
	hex: '#4B6B3E',
	hasSmallParts: 'on',
	form: 'short needle',
	secondHex: '',
	lengthCm: '20',
	acrossCm: '',
	hadFrom: '10',
	hadTo: '12',
	lastsFrom: '11',
	lastsTo: '2',
	zone: '5b',
	needs: 'any',
	spacingCm: '',
	rootBallLitres: '',
	kgEach: '0.14 kg',
	watts: '',
	mostEndToEnd: '',
	regulated: '',
	supplier: 'Hillside Greens',
	size: '9.072',
	price: '31.75',
	freightPercent: '8',
}
const errorsOf = (more: Record<string, string>) => {
	const result = read(materialForm('in'), { ...fir, ...more })
	return result.ok ? {} : result.errors
}

describe('a material and its pack', () => {
	test('new', () => {
		const result = read(materialForm('in'), fir)
		expect(result.ok && result.value).toEqual({
			...fir,
			material: null,
			piecesPerUnit: 22.5,
			hex: '#4b6b3e',
			isPoisonousToPeople: false,
			isPoisonousToPets: false,
			hasSmallParts: true,
			secondHex: null,
			lengthCm: 50.8,
			acrossCm: null,
			hadFrom: 10,
			hadTo: 12,
			lastsFrom: 11,
			lastsTo: 2,
			zone: 5.5,
			spacingCm: null,
			rootBallLitres: null,
			kgEach: 0.14,
			watts: null,
			mostEndToEnd: null,
			size: 9.072,
			price: 3175,
			freightPercent: 8,
		})
	})

	test.each([
		['without a height', '', null],
		['of sixteenths', '18 9/16', 47.14875],
		['in centimetres', '120 cm', 120],
	])('%s', (_, lengthCm, is) => {
		const result = read(materialForm('in'), { ...fir, lengthCm })
		expect(result.ok && result.value.lengthCm).toBe(is)
	})

	test('known', () => {
		expect(read(materialForm('in'), { ...fir, material: uuid(2) }).ok).toBe(true)
	})

	test.each([
		{ name: 'a pack of nothing', more: { size: '0' }, says: { size: 'Give a number from 0.001 to 100000.' } },
		{
			name: 'no piece in a unit',
			more: { piecesPerUnit: '0' },
			says: { piecesPerUnit: 'Give a number from 0.001 to 10000.' },
		},
		{
			name: 'a price by a float',
			more: { price: '3e1' },
			says: { price: 'Give an amount such as 12.50, to the cent.' },
		},
		{
			name: 'a price below nothing',
			more: { price: '-1.50' },
			says: { price: 'Give an amount such as 12.50, to the cent.' },
		},
		{
			name: 'freight of more than all',
			more: { freightPercent: '101' },
			says: { freightPercent: 'Give a number from 0 to 100.' },
		},
		{ name: 'a form that nobody draws', more: { form: 'spiral' }, says: { form: 'Choose what it looks like.' } },
		{
			name: 'a stem of no length',
			more: { lengthCm: '0' },
			says: { lengthCm: 'Give a measure from 1 to 393 in.' },
		},
		{
			name: 'a length that never ends',
			more: { lengthCm: '1e400' },
			says: { lengthCm: 'Give a measure such as 18, 18.5 or 18 1/2.' },
		},
		{
			name: 'a spread of less than nothing',
			more: { acrossCm: '-4' },
			says: { acrossCm: 'Give a measure from 1 to 393 in.' },
		},
		{
			name: 'a spacing in words',
			more: { spacingCm: 'a hand' },
			says: { spacingCm: 'Give a measure such as 18, 18.5 or 18 1/2.' },
		},
		{ name: 'a thirteenth month', more: { hadTo: '13' }, says: { hadTo: 'Choose a month.' } },
		{
			name: 'a zone beyond the map',
			more: { zone: '14' },
			says: { zone: 'Give a hardiness zone such as 5b, or nothing.' },
		},
		{ name: 'half a string of lights', more: { mostEndToEnd: '1.5' }, says: { mostEndToEnd: 'Give a whole number.' } },
		{ name: 'no supplier', more: { supplier: '' }, says: { supplier: 'This cannot be left empty.' } },
		{ name: 'a kind that nobody knows', more: { kind: 'plastic' }, says: { kind: expect.any(String) } },
		{ name: 'a forged id', more: { material: 'new' }, says: { material: 'This names nothing that is known here.' } },
		{ name: 'a field of ours', more: { onlyHere: 'on' }, says: { form: expect.stringContaining('Unrecognized key') } },
	])('refuses $name', ({ more, says }) => {
		expect(errorsOf(more)).toEqual(says)
	})
})
