/** What a field is for, and so what it takes. */
export type Kind =
	| 'words'
	| 'lines'
	| 'choice'
	| 'id'
	| 'number'
	| 'length'
	| 'money'
	| 'hex'
	| 'day'
	| 'address'
	| 'hash'
	| 'key'
	| 'tick'

export type Hostile = { readonly what: string; readonly value: string | Buffer; readonly storedIn: readonly Kind[] }

const text: readonly Kind[] = ['words', 'lines']

/** Text that does harm somewhere, and where it is nevertheless text: stored as it is and shown escaped. */
export const hostile: readonly Hostile[] = [
	{ what: 'a script', value: '<script>alert(1)</script>', storedIn: text },
	{ what: 'a picture', value: '"><img src=x onerror=alert(1)>', storedIn: text },
	{ what: 'SQL', value: "'); DROP TABLE client; --", storedIn: text },
	{ what: 'a template', value: ['{{7*7}}', '$', '{7*7}', '<%= 7*7 %>'].join(''), storedIn: text },
	{ what: 'a formula', value: '=HYPERLINK("http://e.example")', storedIn: text },
	{ what: 'a prototype', value: '__proto__', storedIn: text },
	{ what: 'pictures of people', value: 'fir 🌲 and 👩‍🌾', storedIn: text },
	// A surrogate alone, as bytes that only look like UTF-8: read as three signs that nothing could be read.
	{ what: 'half a sign', value: Buffer.from([0x61, 0xed, 0xa0, 0x80, 0x62]), storedIn: text },
	{ what: 'bytes that are no text', value: Buffer.from([0x61, 0xff, 0xc0, 0xaf, 0x62]), storedIn: text },
	{ what: 'a head of a mail', value: 'a\r\nBcc: x@elsewhere.example', storedIn: ['lines'] },
	{ what: 'a turn of the reading order', value: 'abc\u202egnp.exe', storedIn: [] },
	{ what: 'an isolated turn', value: 'abc\u2067def', storedIn: [] },
	{ what: 'nothing with a sign in it', value: 'a\u0000b', storedIn: [] },
	{ what: 'a bell', value: 'a\u0007b', storedIn: [] },
	{ what: '10,000 signs', value: 'x'.repeat(10_000), storedIn: [] },
]

/** What is no number that a person types. */
export const numbers: readonly Hostile[] = [
	'-1',
	'1.5555',
	'1e9',
	'NaN',
	'Infinity',
	'-Infinity',
	'0x10',
	'1,5',
	'9'.repeat(20),
	'１２',
	'1 2',
	'',
].map((value) => ({ what: JSON.stringify(value), value, storedIn: [] }))

/** A length has four decimals, or a part of a tape. */
export const lengths: readonly Hostile[] = [
	...numbers.filter(({ value }) => value !== '1.5555'),
	...['1.55555', '1e400', '--5', '１８', '18 1/3', '18 1/0', '18.5½', '18 lb', `1'6"`, '9 m', '18 constructor'].map(
		(value) => ({ what: JSON.stringify(value), value, storedIn: [] }),
	),
]

/** Money is to the cent, and no more than a pack can cost. */
export const amounts: readonly Hostile[] = [
	...numbers,
	{ what: 'half a cent', value: '12.505', storedIn: [] },
	{ what: 'a cent too many', value: '100000.01', storedIn: [] },
	{ what: 'twice as much as there may be', value: '200000', storedIn: [] },
]

/** Every value that is tried in a field of a kind; whether it may be left empty is for the form to say. */
export function triedIn(kind: Kind, mayBeEmpty = false): readonly Hostile[] {
	const more = { number: numbers, length: lengths, money: amounts }[String(kind)] ?? []
	return [...hostile, ...more].filter(({ value }) => !(mayBeEmpty && value === ''))
}

export const isStored = (kind: Kind, { storedIn }: Hostile): boolean => storedIn.includes(kind)

/** As React writes text into a page. */
export const escaped = (value: string): string =>
	value
		.replaceAll('&', '&amp;')
		.replaceAll('<', '&lt;')
		.replaceAll('>', '&gt;')
		.replaceAll('"', '&quot;')
		.replaceAll("'", '&#x27;')

const live = [/<script>alert/i, /<img src=x/i]

/** What of it would be alive in a page. */
export const aliveIn = (page: string): string[] => live.flatMap((shape) => page.match(shape)?.[0] ?? [])
