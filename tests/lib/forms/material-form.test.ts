import { describe, expect, test } from 'vitest'
import { materialForm } from '@/lib/forms/material-form'
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
	supplier: 'Hillside Greens',
	size: '9.072',
	price: '31.75',
	freightPercent: '8',
}
const errorsOf = (more: Record<string, string>) => {
	const result = read(materialForm, { ...fir, ...more })
	return result.ok ? {} : result.errors
}

describe('a material and its pack', () => {
	test('new', () => {
		const result = read(materialForm, fir)
		expect(result.ok && result.value).toEqual({
			...fir,
			material: null,
			piecesPerUnit: 22.5,
			hex: '#4b6b3e',
			isPoisonousToPeople: false,
			isPoisonousToPets: false,
			hasSmallParts: true,
			size: 9.072,
			price: 3175,
			freightPercent: 8,
		})
	})

	test('known', () => {
		expect(read(materialForm, { ...fir, material: uuid(2) }).ok).toBe(true)
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
		{ name: 'no supplier', more: { supplier: '' }, says: { supplier: 'This cannot be left empty.' } },
		{ name: 'a kind that nobody knows', more: { kind: 'plastic' }, says: { kind: expect.any(String) } },
		{ name: 'a forged id', more: { material: 'new' }, says: { material: 'This names nothing that is known here.' } },
		{ name: 'a field of ours', more: { onlyHere: 'on' }, says: { form: expect.stringContaining('Unrecognized key') } },
	])('refuses $name', ({ more, says }) => {
		expect(errorsOf(more)).toEqual(says)
	})
})
