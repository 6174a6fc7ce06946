import { describe, expect, test } from 'vitest'
import { canonical, type Json } from '@/lib/record/canonical'
import { hashOf } from '@/lib/record/hash'

// RFC 8785, JSON Canonicalization Scheme: the sample of section 3.2.2 and the test data of the RFC's author
// (cyberphone/json-canonicalization, testdata); digests are SHA-256 of the UTF-8 output.
const vectors: { name: string; input: string; output: string; digest: string }[] = [
	{
		name: 'values, the sample of section 3.2.2',
		input: String.raw`{
			"numbers": [333333333.33333329, 1E30, 4.50, 2e-3, 0.000000000000000000000000001],
			"string": "\u20ac$\u000F\u000aA'\u0042\u0022\u005c\\\"\/",
			"literals": [null, true, false]
		}`,
		output: String.raw`{"literals":[null,true,false],"numbers":[333333333.3333333,1e+30,4.5,0.002,1e-27],"string":"€$\u000f\nA'B\"\\\\\"/"}`,
		digest: '2d5e01a318d0f0879ab568c4be289c8b1f64ef8921a53c6277d5e069978baacb',
	},
	{
		name: 'arrays',
		input: '[ 56, { "d": true, "10": null, "1": [ ] } ]',
		output: '[56,{"1":[],"10":null,"d":true}]',
		digest: '099601b171cafed97c333f8878d68e7f8c8f795412adb34b2fdcf0e7c7beac42',
	},
	{
		name: 'structures',
		input: String.raw`{
			"1": {"f": {"f": "hi", "F": 5}, "\n": 56.0},
			"10": { }, "": "empty", "a": { }, "111": [ {"e": "yes", "E": "no"} ], "A": { }
		}`,
		output: String.raw`{"":"empty","1":{"\n":56,"f":{"F":5,"f":"hi"}},"10":{},"111":[{"E":"no","e":"yes"}],"A":{},"a":{}}`,
		digest: '605f65004ec2db7692522a0852c22f1c989e036d547e88963d1a3143cf3195d5',
	},
	{
		name: 'unicode, not normalised',
		input: String.raw`{ "Unnormalized Unicode": "A\u030a" }`,
		output: '{"Unnormalized Unicode":"A\u030a"}',
		digest: '0d99aad92a125196ff887876643fd3206786a84ddce2cee52ba4ad256d2381d3',
	},
]

describe('RFC 8785', () => {
	test.each(vectors)('$name', ({ input, output, digest }) => {
		const value: Json = JSON.parse(input)
		expect(canonical(value)).toBe(output)
		expect(hashOf(value)).toBe(digest)
		expect(canonical(JSON.parse(output))).toBe(output)
	})

	test('keys are sorted by their UTF-16 code units, whatever the language (the author’s set: weird, french)', () => {
		const weird: Json = JSON.parse(String.raw`{
			"\u20ac": "Euro Sign", "1": "One", "\u0080": "Control\u007f", "\ud83d\ude02": "Smiley",
			"\u00f6": "Latin Small Letter O With Diaeresis", "\ufb33": "Hebrew Letter Dalet With Dagesh",
			"</script>": "Browser Challenge"
		}`)
		const keys = ['1', '</script>', '\u0080', 'ö', '€', '😂', '\ufb33']
		const places = keys.map((key) => canonical(weird).indexOf(`"${key}":`))
		expect(places).toEqual(places.toSorted((a, b) => a - b))
		expect(places[0]).toBe(1)
		const french = { sin: 4, pêche: 3, peach: 1, péché: 2 }
		expect(canonical(french)).toBe('{"peach":1,"péché":2,"pêche":3,"sin":4}')
	})
})

const fromBits = (bits: string) => new DataView(Uint8Array.from(Buffer.from(bits, 'hex')).buffer).getFloat64(0)

// RFC 8785, appendix B: doubles by their IEEE 754 bits.
describe('numbers', () => {
	test.each([
		{ bits: '0000000000000000', text: '0' },
		{ bits: '8000000000000000', text: '0' },
		{ bits: '7fefffffffffffff', text: '1.7976931348623157e+308' },
		{ bits: '4340000000000000', text: '9007199254740992' },
		{ bits: '44b52d02c7e14af6', text: '1e+23' },
		{ bits: '444b1ae4d6e2ef50', text: '1e+21' },
		{ bits: '41b3de4355555553', text: '333333333.3333332' },
		{ bits: '41b3de4355555555', text: '333333333.3333333' },
		{ bits: 'becbf647612f3696', text: '-0.0000033333333333333333' },
		{ bits: '43143ff3c1cb0959', text: '1424953923781206.2' },
	])('$bits is $text', ({ bits, text }) => {
		expect(canonical(fromBits(bits))).toBe(text)
	})

	test.each([
		{ name: 'NaN', bits: '7fffffffffffffff' },
		{ name: 'infinity', bits: '7ff0000000000000' },
		{ name: 'minus infinity', bits: 'fff0000000000000' },
	])('$name is refused, wherever it stands', ({ bits }) => {
		const value = fromBits(bits)
		expect(() => canonical(value)).toThrow('is not allowed')
		expect(() => canonical({ minutes: [12, value] })).toThrow('is not allowed')
		expect(() => hashOf({ minutes: value })).toThrow('is not allowed')
	})

	// Section 3.2.2.2: invalid Unicode, such as half of a surrogate pair, must end in an error.
	test.each(['\ud800', 'a\udc00', '\udbffb'])('half a pair is refused: %j', (text) => {
		expect(() => canonical(text)).toThrow('Lone surrogate')
		expect(() => canonical({ [text]: 1 })).toThrow('Lone surrogate')
	})
})
