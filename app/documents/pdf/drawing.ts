/** Code points that both weights of a file's letters hold. */
export type Letters = ReadonlySet<number>

/** Stands for a sign that the letters lack. */
export const placeholder = '□'

/** Unseen signs that a word may hold: joiners (Unicode, U+200C, U+200D) and the word joiner (U+2060). */
const joins = new Set([0x200c, 0x200d, 0x2060])
/** Controls, marks that turn the reading order about, halves of pairs, and what no standard gives a form. */
const unseen = /[\p{Cc}\p{Cf}\p{Cs}\p{Co}\p{Cn}]/u

const signs = new Intl.Segmenter('en', { granularity: 'grapheme' })
const pointsOf = (text: string) => [...text].map((sign) => sign.codePointAt(0) ?? 0)
const pointWords = (text: string) =>
	pointsOf(text)
		.map((point) => `U+${point.toString(16).toUpperCase().padStart(4, '0')}`)
		.join(' ')

function isDrawable(sign: string, letters: Letters): boolean {
	return pointsOf(sign).every(
		(point) => letters.has(point) && (joins.has(point) || !unseen.test(String.fromCodePoint(point))),
	)
}

export type Drawing = {
	/** The text in signs that can be drawn. */
	readonly say: (text: string) => string
	/** The same, and behind it, where a sign was replaced, the code points of all of them. */
	readonly sayWhole: (text: string) => string
	/** True once a sign was replaced. */
	readonly hasReplaced: () => boolean
}

const space = /[\t \u00a0\u202f]/

/** Writes texts with the letters at hand: what they lack becomes a box, and nothing is left out in silence. */
export function drawing(letters: Letters): Drawing {
	let replaced = false
	const one = (sign: string): string => {
		if (sign === '\n' || sign === '\r\n') return '\n'
		if (space.test(sign)) return ' '
		if (isDrawable(sign, letters)) return sign
		replaced = true
		return placeholder
	}
	const say = (text: string) => Array.from(signs.segment(text.normalize('NFC')), ({ segment }) => one(segment)).join('')
	const sayWhole = (text: string) => {
		const said = say(text)
		const isWhole = said === text.normalize('NFC').replaceAll(/[\t\u00a0\u202f]/g, ' ')
		return isWhole ? said : `${said} (${pointWords(text)})`
	}
	return { say, sayWhole, hasReplaced: () => replaced }
}
