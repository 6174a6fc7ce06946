import { describe, expect, test } from 'vitest'
import { judge } from '@/lib/colour/palette/judge'
import type { Chip } from '@/lib/colour/palette/palette'
import { hex } from '@/lib/units/hex'
import { winter } from '../material'
import { bakery } from './ask'

const chip = (name: string, of: string): Chip => ({ name, hex: hex(of) })
const copper = chip('Copper', '#b4643a')
const plum = chip('Plum', '#6a2f4b')
const birch = chip('Birch', '#d8d0c1')
const whole = [copper, plum, birch]

describe('a palette that the designer changes', () => {
	const before = judge(whole, bakery())

	test.each([
		{
			name: 'the awning’s plum for a moss green: one echo less, and it says so',
			chips: [copper, chip('Moss', '#4a6a44'), birch],
			gone: 'Plum is very near your awning.',
			come: 'It runs from moss to birch.',
			part: 'echo',
		},
		{
			name: 'the leading copper for a green: lost in the greens',
			chips: [chip('Moss', '#456640'), plum, birch],
			gone: 'Copper shows against every green of the month.',
			come: 'Moss would be lost in 2 of the 3 greens of the month: choose the others.',
			part: 'standing',
		},
		{
			name: 'the birch for the grey of the glass: no stem left',
			chips: [copper, plum, chip('Glass', '#3f5a60')],
			gone: 'White birch stands out from the shop glass.',
			come: 'No stem for the middle has any of these colours.',
			part: 'standing',
		},
		{
			name: 'the birch for another copper: flat',
			chips: [copper, chip('Rust', '#a5512b'), chip('Ochre', '#c07a32')],
			gone: 'It runs from plum to birch.',
			come: 'Its colours are about as light as each other: from across the street they run together.',
			part: 'spread',
		},
		{
			name: 'the plum for a navy that storage does not hold',
			chips: [copper, chip('Navy', '#24365a'), birch],
			gone: 'Storage holds something of every colour.',
			come: 'Storage holds something for copper and birch.',
			part: 'stock',
		},
		{
			name: 'the plum for a pure blue: nothing is of that colour',
			chips: [copper, chip('Electric', '#0000ff'), birch],
			gone: 'Plum is very near your awning.',
			come: 'Nothing that can be had that month comes near electric.',
			part: 'stock',
		},
	] as const)('$name', ({ chips, gone, come, part }) => {
		const after = judge(chips, bakery({ materials: [...Object.values(winter)] }))
		expect(before.words).toContain(gone)
		expect(after.words).not.toContain(gone)
		expect(after.words).toContain(come)
		expect(after.parts[part]).toBeLessThan(before.parts[part])
		expect(after.score).toBeLessThan(before.score)
	})

	test('keeps the names that the designer gave, and finds the materials anew', () => {
		const { colours } = judge([chip('Mother’s kettle', '#b8673c'), chip('Snow', '#fdfdff')], bakery())
		expect(colours).toEqual([
			{
				name: 'Mother’s kettle',
				hex: '#b8673c',
				echoes: 'echoes the copper of your baking pans inside',
				materials: [winter.copper.id],
			},
			{ name: 'Snow', hex: '#fdfdff', echoes: '', materials: [] },
		])
	})

	test('one echo belongs to one colour, the nearest', () => {
		const { colours } = judge([chip('A', '#bb9346'), chip('B', '#b08d4f'), chip('C', '#b3904a')], bakery())
		expect(colours.map(({ echoes }) => echoes)).toEqual(['', 'echoes your door brass', ''])
	})

	test('tells a lighter and a darker echo', () => {
		const { colours } = judge([chip('Pale', '#c5a05c'), chip('Dark', '#592a3e')], bakery())
		expect(colours.map(({ echoes }) => echoes)).toEqual(['echoes your door brass', 'echoes the plum of your awning'])
		const lighter = judge([chip('Pale', '#cba868')], bakery()).colours[0]
		expect(lighter?.echoes).toBe('echoes your door brass, lighter')
	})

	test('without a colour there is nothing to say, and one alone has nothing beside it', () => {
		expect(judge([], bakery())).toEqual({
			colours: [],
			parts: { echo: 0, standing: 0, spread: 0, stock: 0 },
			score: 0,
			words: ['It has no colours yet.'],
		})
		expect(judge([copper], bakery()).words).toContain('One colour alone has nothing beside it.')
	})

	test('before another wall the same palette is another', () => {
		const pale = bakery({ wall: { kind: 'stucco', hex: hex('#d8cfbf') } })
		expect(judge(whole, pale).words).toContain('White birch would be lost against the stucco.')
		expect(judge(whole, pale).score).toBeLessThan(before.score)
	})
})
