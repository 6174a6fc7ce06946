import { z } from 'zod'
import { type Rates, ratesSchema } from '../../pricing/rates'
import { amountField, decimalField, onceField, tick } from '../fields'
import { type RateField, rateChoices, rateFields, rateTicks } from './rate-table'

type Tree = { [name: string]: unknown }

/** {"soil.topUpPercent": 10} becomes {soil: {topUpPercent: 10}}. */
function nested(flat: Readonly<Record<string, unknown>>): Tree {
	const groups = new Map<string, Record<string, unknown>>()
	const tree: Tree = {}
	for (const [path, value] of Object.entries(flat)) {
		const [first = '', ...rest] = path.split('.')
		if (rest.length === 0) tree[first] = value
		else groups.set(first, { ...groups.get(first), [rest.join('.')]: value })
	}
	for (const [name, within] of groups) tree[name] = nested(within)
	return tree
}

function flatten(tree: object, before = ''): [string, unknown][] {
	return Object.entries(tree).flatMap(([name, value]): [string, unknown][] =>
		typeof value === 'object' && value !== null ? flatten(value, `${before}${name}.`) : [[`${before}${name}`, value]],
	)
}

function fieldOf({ is, from, to }: RateField): z.ZodType {
	if (is === 'money')
		return amountField.refine(
			(amount) => amount >= from * 100 && amount <= to * 100,
			`Give an amount from ${from} to ${to}.`,
		)
	const number = decimalField(from, to)
	return is === 'whole' ? number.refine(Number.isInteger, 'Give a whole number.') : number
}

const shape: Record<string, z.ZodType> = {
	...Object.fromEntries(rateFields.map((field) => [field.at, fieldOf(field)])),
	...Object.fromEntries(rateTicks.map(({ at }) => [at, tick])),
	...Object.fromEntries(rateChoices.map(({ at, choices }) => [at, z.enum(choices, 'Choose one of the two.')])),
}

/** Every number as text, by its place in the rates: "lossPercent.fresh". @returns whole, nested rates */
export const ratesForm = z.strictObject(shape).transform(nested).pipe(ratesSchema)

const unclear = 'The form does not say what to do with the rates. Open the page again.'
const beside = {
	once: onceField,
	version: z
		.string()
		.regex(/^[1-9]\d{0,6}$/, unclear)
		.transform(Number),
	step: z.enum(['see', 'save'], unclear),
}

/** The same with the version that it was made from, and whether to show what it does or to let it stand. */
export const saveRatesForm = z.looseObject(beside).transform(({ once, version, step, ...fields }, context) => {
	const read = ratesForm.safeParse(fields)
	if (read.success) return { once, version, step, rates: read.data }
	for (const { path, message } of read.error.issues) context.addIssue({ code: 'custom', path, message })
	return z.NEVER
})

const money = new Set(rateFields.filter(({ is }) => is === 'money').map(({ at }) => at))

function shown(path: string, value: unknown): string {
	if (typeof value === 'boolean') return value ? 'on' : ''
	if (typeof value === 'number' && money.has(path)) return (value / 100).toFixed(2)
	return String(value)
}

/** Rates as a form shows them. */
export const ratesText = (rates: Rates): Record<string, string> =>
	Object.fromEntries(flatten(rates).map(([path, value]) => [path, shown(path, value)]))
