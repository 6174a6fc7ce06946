import { createRequire } from 'node:module'
import { join } from 'node:path'
import { Font } from '@react-pdf/renderer'
import type { Letters } from '@/app/documents/pdf/drawing'
import { family } from '@/app/documents/pdf/paper'

/** Weights as numbers: by their names the renderer's own look-up finds the regular one for both. Narrow, so that a line holds some seventy signs; Latin, Greek, Cyrillic, Hebrew, Arabic, Armenian, Georgian. */
const files = [
	{ file: 'DejaVuSansCondensed.ttf', fontWeight: 400 },
	{ file: 'DejaVuSansCondensed-Bold.ttf', fontWeight: 700 },
] as const

/** Alphabetic and Arabic presentation forms (Unicode, U+FB00 to U+FDFF and U+FE70 to U+FEFF). */
const isForm = (point: number) => (point >= 0xfb00 && point <= 0xfdff) || (point >= 0xfe70 && point <= 0xfeff)

/** A word of this many signs is broken wherever its line ends. */
const longWord = 30
const signs = new Intl.Segmenter('en', { granularity: 'grapheme' })

/**
 * No hyphens: what is signed is copied letter by letter. The renderer puts one where a line ends between two pieces, also
 * where the script changes inside a word; at an empty piece it puts none.
 */
const pieces = (word: string): string[] => {
	if (word.trim() === '') return [word]
	const parts = word.length < longWord ? [word] : Array.from(signs.segment(word), ({ segment }) => segment)
	return parts.flatMap((part) => [part, ''])
}

const points = (text: string) => [...text].map((sign) => sign.codePointAt(0) ?? 0)

/**
 * The code points of one weight. Each letter is told which signs it stands for before it is used: the library would keep
 * one that it met first as a part of another, the z in ž, without any, and no reader could copy it then, in no later file.
 */
async function told(fontWeight: (typeof files)[number]['fontWeight']): Promise<number[]> {
	await Font.load({ fontFamily: family, fontWeight })
	const { data } = Font.getFont({ fontFamily: family, fontWeight })
	if (data === null) throw new Error(`letters: weight ${fontWeight} was not read`)
	for (const point of data.characterSet) {
		const glyph = data.glyphForCodePoint(point)
		// A form made for one place in a word stands for its letter (Unicode Standard Annex 15, compatibility).
		if (isForm(point)) glyph.codePoints = points(String.fromCodePoint(point).normalize('NFKC'))
	}
	return data.characterSet
}

async function read(): Promise<Letters> {
	const near = createRequire(join(process.cwd(), 'package.json'))
	const src = (file: string) => near.resolve(`dejavu-fonts-ttf/ttf/${file}`)
	Font.register({ family, fonts: files.map(({ file, fontWeight }) => ({ src: src(file), fontWeight })) })
	Font.registerHyphenationCallback(pieces)
	const [first = [], ...rest] = await Promise.all(files.map(({ fontWeight }) => told(fontWeight)))
	const others = rest.map((all) => new Set(all))
	return new Set(first.filter((point) => others.every((all) => all.has(point))))
}

let known: Promise<Letters> | undefined

/** The letters that both weights hold, from the packages beside which the site is started; read once. */
export function letters(): Promise<Letters> {
	known ??= read()
	return known
}
