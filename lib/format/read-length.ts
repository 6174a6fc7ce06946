import { type LengthUnit, toCm } from './length'

/** Parts of an inch that have a sign of their own (Unicode, number forms). */
const signs: Readonly<Record<string, number>> = {
	'¼': 0.25,
	'½': 0.5,
	'¾': 0.75,
	'⅛': 0.125,
	'⅜': 0.375,
	'⅝': 0.625,
	'⅞': 0.875,
}
/** What a tape is divided into. */
const divisions: ReadonlySet<number> = new Set([2, 4, 8, 16])

const units: ReadonlyMap<string | undefined, LengthUnit | 'mm'> = new Map([
	...['in', 'in.', 'inch', 'inches', '"', '″', '”'].map((each) => [each, 'in'] as const),
	...['cm', 'cm.'].map((each) => [each, 'cm'] as const),
	...['mm', 'mm.'].map((each) => [each, 'mm'] as const),
])

const shape = new RegExp(
	[
		'^(?<minus>[-−]?)',
		'(?:(?<decimal>\\d{1,5}(?:\\.\\d{1,4})?|\\.\\d{1,4})',
		'|(?:(?<whole>\\d{1,5})[\\s-]+)?(?<over>\\d{1,2})[/⁄](?<under>\\d{1,2})',
		'|(?<before>\\d{0,5})\\s*(?<sign>[¼½¾⅛⅜⅝⅞]))',
		'\\s*(?<unit>[a-z.]*|["″”])$',
	].join(''),
	'i',
)

type Groups = Readonly<Record<string, string | undefined>>

function numberOf({ decimal, whole, over, under, before, sign }: Groups): number | null {
	if (decimal !== undefined) return Number(decimal)
	if (sign !== undefined) return Number(before) + (signs[sign] ?? 0)
	const [n, of] = [Number(over), Number(under)]
	return divisions.has(of) && n > 0 && n < of ? Number(whole ?? 0) + n / of : null
}

/**
 * A length as people write it, in cm: "18", "18.5", "18 1/2", "18½", "7/16", with a unit of its own ("46 cm", `18"`) or in
 * the studio's. To four decimals, and to the sixteenth of a tape; null where it is no length, below nothing where it
 * was typed so.
 */
export function readLength(typed: string, unit: LengthUnit): number | null {
	const groups = shape.exec(typed.trim())?.groups
	const value = groups && numberOf(groups)
	const own = groups?.unit === '' ? unit : units.get(groups?.unit?.toLowerCase())
	if (value === undefined || value === null || own === undefined) return null
	const cm = own === 'mm' ? toCm(value / 10, 'cm') : toCm(value, own)
	return groups?.minus === '' || cm === 0 ? cm : -cm
}

/** What is said of one that cannot be read. */
export const howToMeasure = (unit: LengthUnit): string =>
	unit === 'in' ? 'Give a measure such as 18, 18.5 or 18 1/2.' : 'Give a measure such as 46 or 46.5.'
