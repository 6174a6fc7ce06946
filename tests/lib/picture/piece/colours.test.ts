import { describe, expect, test } from 'vitest'
import type { Piece } from '@/lib/picture/piece'
import { type Hex, hex } from '@/lib/units/hex'
import { drawnFrom, lineOf, type SeenForm, seenForms } from './line'
import { coloursOf, layersOf } from './read-piece'

const all = (pieces: readonly Piece[]): Set<string> => new Set(pieces.flatMap(coloursOf))
const drawing = (pieces: readonly Piece[]): string[][] => pieces.map((piece) => layersOf(piece).map(({ d }) => d))

/** Of these the second colour shows nothing: they have one colour all over. */
const plain: readonly SeenForm[] = [
	'straight stems',
	'twisting stems',
	'evergreen top',
	'flat fan',
	'long needle',
	'short needle',
	'cone',
	'pod',
	'fern',
]

const repainted: Hex = hex('#3f5f8a')

describe('the colours of a piece', () => {
	test.each(seenForms)('%s: the colour of its line is in it, and goes when the line is given another', (form) => {
		const line = lineOf(form)
		expect(all(drawnFrom(line))).toContain(line.hex)
		const other = all(drawnFrom({ ...line, hex: repainted }))
		expect(other).toContain(repainted)
		expect(other).not.toContain(line.hex)
	})

	test.each(seenForms.filter((form) => !plain.includes(form)))('%s: so does its second colour', (form) => {
		const before = all(drawnFrom(lineOf(form)))
		const after = all(drawnFrom(lineOf(form, { secondHex: repainted })))
		expect(after).not.toEqual(before)
	})

	test.each(plain)('%s: has one colour all over', (form) => {
		expect(drawnFrom(lineOf(form, { secondHex: repainted }))).toEqual(drawnFrom(lineOf(form, { secondHex: null })))
	})

	test.each(seenForms)('%s: a palette repaints it and moves nothing', (form) => {
		const line = lineOf(form)
		expect(drawing(drawnFrom({ ...line, hex: repainted }))).toEqual(drawing(drawnFrom(line)))
	})

	test('a piece is drawn in three tones at least, so that it is not flat', () => {
		for (const form of seenForms)
			for (const piece of drawnFrom(lineOf(form))) expect(new Set(coloursOf(piece)).size).toBeGreaterThanOrEqual(3)
	})

	test('pale bark bears the marks of birch, dark bark does not', () => {
		const pens = (colour: string) =>
			drawnFrom(lineOf('straight stems', { hex: hex(colour) })).flatMap((piece) =>
				layersOf(piece).filter(({ stroke }) => stroke !== null),
			)
		expect(pens('#d8d0c1').length).toBeGreaterThan(0)
		expect(pens('#8f2c2f')).toEqual([])
	})

	test('a green second colour gives berries their leaves, a brown one only their bark', () => {
		const fills = (second: string) =>
			drawnFrom(lineOf('berries', { secondHex: hex(second) })).flatMap((piece) =>
				layersOf(piece).filter(({ fill }) => fill !== null),
			)
		expect(fills('#4a5a3a').length).toBeGreaterThan(0)
		expect(fills('#5d5148')).toEqual([])
	})
})
