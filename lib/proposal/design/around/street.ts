/** Ways to shorten a street's name, after USPS Publication 28, appendix C1 (from memory, the usual ones). */
const shortened: Readonly<Record<string, string>> = {
	alley: 'aly',
	avenue: 'ave',
	boulevard: 'blvd',
	circle: 'cir',
	court: 'ct',
	drive: 'dr',
	highway: 'hwy',
	lane: 'ln',
	parkway: 'pkwy',
	place: 'pl',
	road: 'rd',
	square: 'sq',
	street: 'st',
	terrace: 'ter',
}

const houseNumber = /^\d+[a-z]?(?:[-–/]\d+[a-z]?)?\s+/
const within = /^(?:(?:apartment|apt|floor|suite|ste|unit)\b|#)/

const plain = (part: string): string =>
	part
		.replaceAll(/[.’']/g, '')
		.split(/\s+/)
		.map((word) => shortened[word] ?? word)
		.join(' ')

/** Street and town of an address as people write it: the line that begins with a house number, and what comes after. */
function whereIs(address: string): { street: string; town: string } | null {
	const parts = address
		.toLowerCase()
		.split(/[\n,]/)
		.map((part) => part.trim())
		.filter((part) => part !== '' && !within.test(part))
	const at = parts.findIndex((part) => houseNumber.test(part))
	const line = parts[at]
	if (line === undefined) return null
	return { street: plain(line.replace(houseNumber, '')), town: plain(parts[at + 1] ?? '') }
}

/**
 * The street of an address in its town, the same text for whoever else is there, whatever their house numbers. An
 * address without a house number is in no street that one could be sure of: null.
 */
export function streetOf(address: string): string | null {
	const where = whereIs(address)
	return where && `${where.street}, ${where.town}`
}

const usual = new Set([...Object.keys(shortened), ...Object.values(shortened)])

/**
 * A word that every address in the same street has, in small letters and without full stops and apostrophes; null where
 * there is none that is always written alike.
 */
export function streetWord(address: string): string | null {
	const words = whereIs(address)?.street.split(' ') ?? []
	const plainly = words.filter((word) => /^[a-z0-9]+$/.test(word) && !usual.has(word))
	return plainly.toSorted((a, b) => b.length - a.length)[0] ?? null
}
