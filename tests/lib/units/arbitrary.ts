import fc from 'fast-check'

const oddUnits = [
	0x00, 0x09, 0x0a, 0x0d, 0x20, 0x85, 0xa0, 0x301, 0x958, 0x200f, 0x2028, 0x202e, 0x2066, 0xd83c, 0xdf32,
]

/** Any UTF-16 at all, half pairs and controls among it, and plain letters often enough. */
export const anyText = (maxLength: number, minLength = 0): fc.Arbitrary<string> =>
	fc
		.array(
			fc.oneof(fc.integer({ min: 0x20, max: 0x7e }), fc.integer({ min: 0, max: 0xffff }), fc.constantFrom(...oddUnits)),
			{ minLength, maxLength },
		)
		.map((units) => String.fromCharCode(...units))
