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
 * Whether two addresses are in one street of one town, whatever their house numbers. An address without a house number
 * is in no street that one could be sure of.
 */
export function isSameStreet(a: string, b: string): boolean {
	const [one, other] = [whereIs(a), whereIs(b)]
	return one !== null && other !== null && one.street === other.street && one.town === other.town
}
