export const families = [
	'white',
	'grey',
	'black',
	'brown',
	'red',
	'orange',
	'yellow',
	'green',
	'teal',
	'blue',
	'purple',
	'pink',
] as const
/** What a colour is called when one word of everyday must do, as in an early order. */
export type Family = (typeof families)[number]

type Span = readonly [from: number, to: number]

/** Which prefix a name takes: none, warm and cool, or deep, pale, soft and bright. */
type Prefix = 'none' | 'warmth' | 'tone'

/** A range of OKLCh: lightness 0 to 1, chroma, hue in degrees; a hue that ends below its start runs over 0. */
export type Named = {
	readonly name: string
	readonly family: Family
	readonly l: Span
	readonly c: Span
	readonly h: Span
	readonly prefix: Prefix
}

const every: Span = [0, 361]
const most = 1

const named =
	(prefix: Prefix) =>
	(name: string, family: Family, l: Span, c: Span, h: Span = every): Named => ({ name, family, l, c, h, prefix })

const plain = named('none')
const neutral = named('warmth')
const toned = named('tone')

const neutrals: readonly Named[] = [
	plain('bone', 'white', [0.82, 0.935], [0.012, 0.036], [55, 112]),
	plain('cream', 'white', [0.935, 2], [0.012, 0.039], [55, 112]),
	plain('frost', 'white', [0.85, 0.97], [0.008, 0.03], [190, 280]),
	plain('black', 'black', [0, 0.25], [0, 0.03]),
	neutral('charcoal', 'black', [0.25, 0.4], [0, 0.02]),
	neutral('dark grey', 'grey', [0.4, 0.52], [0, 0.02]),
	neutral('grey', 'grey', [0.52, 0.74], [0, 0.025]),
	neutral('pale grey', 'grey', [0.74, 0.88], [0, 0.02]),
	neutral('white', 'white', [0.88, 2], [0, 0.02]),
]

const earths: readonly Named[] = [
	plain('terracotta', 'orange', [0.5, 0.7], [0.075, 0.115], [28, 48]),
	plain('rust', 'orange', [0.48, 0.57], [0.095, 0.16], [33, 55]),
	plain('copper', 'orange', [0.57, 0.7], [0.095, 0.16], [38, 58]),
	plain('bronze', 'brown', [0.48, 0.64], [0.065, 0.13], [55, 75]),
	plain('ochre', 'yellow', [0.58, 0.74], [0.12, 0.16], [62, 92]),
	plain('brass', 'yellow', [0.6, 0.745], [0.08, 0.12], [70, 92]),
	plain('gold', 'yellow', [0.745, 0.92], [0.09, most], [80, 100]),
	plain('amber', 'orange', [0.68, 0.85], [0.12, most], [62, 80]),
	plain('straw', 'yellow', [0.8, 0.97], [0.055, 0.12], [76, 108]),
	plain('tan', 'brown', [0.66, 0.84], [0.035, 0.1], [50, 92]),
	plain('taupe', 'brown', [0.56, 0.76], [0.02, 0.05], [20, 95]),
	plain('peach', 'orange', [0.78, 2], [0.03, 0.13], [35, 76]),
	toned('brown', 'brown', [0, 0.62], [0.018, 0.1], [20, 95]),
	toned('brown', 'brown', [0, 0.5], [0.1, 0.13], [33, 95]),
]

const greens: readonly Named[] = [
	plain('olive', 'green', [0, 0.64], [0.03, most], [95, 127]),
	plain('lichen', 'yellow', [0.64, 0.86], [0.03, 0.075], [92, 120]),
	plain('sage', 'green', [0.58, 0.84], [0.02, 0.062], [115, 168]),
	plain('lime', 'green', [0.7, 2], [0.12, most], [112, 136]),
	plain('spruce', 'teal', [0.38, 0.66], [0.02, 0.06], [190, 232]),
]

const cools: readonly Named[] = [
	plain('navy', 'blue', [0, 0.4], [0.04, 0.2], [236, 280]),
	plain('slate', 'blue', [0.38, 0.72], [0.018, 0.06], [225, 285]),
	plain('lavender', 'purple', [0.74, 2], [0.018, 0.12], [280, 322]),
	plain('indigo', 'purple', [0, 0.36], [0.05, most], [280, 312]),
	plain('mauve', 'purple', [0.5, 0.85], [0.03, 0.13], [315, 345]),
	plain('plum', 'purple', [0, 0.5], [0.04, 0.15], [318, 2]),
	plain('wine', 'red', [0, 0.45], [0.04, 0.12], [2, 26]),
	plain('rose', 'pink', [0.5, 0.76], [0.08, 0.17], [350, 14]),
	plain('rose', 'pink', [0.66, 0.76], [0.08, 0.17], [14, 26]),
	plain('orchid', 'purple', [0.62, 0.86], [0.13, 0.23], [315, 340]),
]

const hues: readonly Named[] = [
	toned('pink', 'pink', [0.6, 0.7], [0, 0.08], [335, 33]),
	toned('pink', 'pink', [0.7, 2], [0, 0.17], [335, 33]),
	toned('red', 'red', [0, 2], [0, most], [14, 34]),
	toned('orange', 'orange', [0, 2], [0, most], [34, 70]),
	toned('yellow', 'yellow', [0, 2], [0, most], [70, 112]),
	toned('green', 'green', [0, 2], [0, most], [112, 172]),
	toned('teal', 'teal', [0, 2], [0, most], [172, 205]),
	toned('blue', 'blue', [0, 2], [0, most], [205, 288]),
	toned('violet', 'purple', [0, 2], [0, most], [288, 320]),
	toned('purple', 'purple', [0, 0.62], [0, most], [320, 345]),
	toned('red', 'red', [0, 0.5], [0, most], [0, 14]),
	toned('pink', 'pink', [0, 2], [0, most], [320, 14]),
]

/** Words of our own for ranges of OKLCh, read from the top: the first that holds the colour names it. */
export const namedRanges: readonly Named[] = [...neutrals, ...earths, ...greens, ...cools, ...hues]
