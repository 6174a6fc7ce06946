import 'server-only'
import { createRequire } from 'node:module'
import { join } from 'node:path'
import { Font } from '@react-pdf/renderer'
import { openSync } from 'fontkit'
import type { Letters } from '@/app/documents/pdf/drawing'
import { family } from '@/app/documents/pdf/paper'

/** Narrow, so that a line holds some seventy signs; Latin, Greek, Cyrillic, Hebrew, Arabic, Armenian, Georgian. */
const files = [
	{ file: 'DejaVuSansCondensed.ttf', fontWeight: 'normal' },
	{ file: 'DejaVuSansCondensed-Bold.ttf', fontWeight: 'bold' },
] as const

/** A word of this many signs is broken wherever its line ends. */
const longWord = 30
const signs = new Intl.Segmenter('en', { granularity: 'grapheme' })

/** No hyphens: what is signed is copied letter by letter. An empty piece lets a line end there without one. */
const pieces = (word: string): string[] =>
	word.length < longWord ? [word] : Array.from(signs.segment(word), ({ segment }) => [segment, '']).flat()

let known: Letters | undefined

/** The letters of all files, from the packages beside which the site is started; read once. */
export function letters(): Letters {
	if (known !== undefined) return known
	const near = createRequire(join(process.cwd(), 'package.json'))
	const fonts = files.map(({ file, fontWeight }) => ({
		src: near.resolve(`dejavu-fonts-ttf/ttf/${file}`),
		fontWeight,
	}))
	Font.register({ family, fonts })
	Font.registerHyphenationCallback(pieces)
	const [first = [], ...rest] = fonts.map(({ src }) => {
		const font = openSync(src)
		return 'characterSet' in font ? font.characterSet : []
	})
	known = new Set(first.filter((point) => rest.every((all) => all.includes(point))))
	return known
}
