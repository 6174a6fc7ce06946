/** Letters that are no base letter with a mark, as they are typed where the keyboard has none; and the typed apostrophe. */
const typed: Readonly<Record<string, string>> = {
	ß: 'ss',
	ø: 'o',
	đ: 'd',
	ð: 'd',
	ł: 'l',
	æ: 'ae',
	œ: 'oe',
	ı: 'i',
	þ: 'th',
	'’': "'",
}

/** Without capitals and marks: compatibility decomposition (Unicode Standard Annex 15), its marks left out. */
const folded = (text: string): string =>
	text
		.normalize('NFKD')
		.replace(/\p{M}/gu, '')
		.toLowerCase()
		.replace(/[ßøđðłæœıþ’]/g, (letter) => typed[letter] ?? letter)

/** Whether every word stands somewhere in the texts, whatever its capitals and accents; no word stands everywhere. */
export function looksFor(words: string): (texts: readonly string[]) => boolean {
	const asked = folded(words)
		.split(/\s+/)
		.filter((word) => word !== '')
	return (texts) => {
		const all = folded(texts.join('\n'))
		return asked.every((word) => all.includes(word))
	}
}
