import { z } from 'zod'
import { mostCents } from '../proposal/draft'
import { type Cents, cents } from '../units/cents'
import { type Day, isDay } from '../units/day'
import { type Hex, isHex } from '../units/hex'
import { type Id, id, isId } from '../units/id'
import { isClean, normal } from '../units/text'

/** One line or several of what a person wrote, at most `max` characters; trimmed, NFC, well-formed. */
export function text(max: number, { min = 0, lines = false } = {}) {
	return z
		.string({ error: 'Write this in words.' })
		.max(4 * max, `Keep this to ${max} characters.`)
		.refine(isClean, 'This holds characters that cannot be stored. Type it again in plain text.')
		.transform((value) => normal(value).trim())
		.refine((value) => value.length >= min, 'This cannot be left empty.')
		.refine((value) => value.length <= max, `Keep this to ${max} characters.`)
		.refine((value) => lines || !value.includes('\n'), 'Keep this on one line.')
}

/** A date as `<input type="date">` sends it. */
export const dayField = z.string().refine((value): value is Day => isDay(value), 'Choose a day of the calendar.')

export const hexField = z
	.string()
	.trim()
	.toLowerCase()
	.refine((value): value is Hex => isHex(value), 'Give a colour such as #5f7488.')

export const idField = <Of extends string>() =>
	z
		.string()
		.refine(isId, 'This names nothing that is known here.')
		.transform((value): Id<Of> => id<Of>(value))

const moneyShape = /^(\d{1,7})(?:\.(\d{1,2}))?$/

/** "12.50" becomes 1250, digit by digit and never by way of a float; "12.505" and "1e9" are refused. */
export const moneyField = z.string().transform((value, context): Cents => {
	const match = moneyShape.exec(value.trim())
	if (match !== null) return cents(Number(`${match[1]}${(match[2] ?? '').padEnd(2, '0')}`))
	context.addIssue({
		code: 'custom',
		message: 'Give an amount such as 12.50, to the cent.',
	})
	return z.NEVER
})

/** An amount of money that a draft and a pack can hold. */
export const amountField = moneyField.refine((amount) => amount <= mostCents, 'Give an amount of at most 100000.00.')

const decimalShape = /^\d{1,6}(?:\.\d{1,3})?$/

/** A decimal of at most three places between `min` and `max`, typed by hand. */
export function decimalField(min: number, max: number) {
	return z
		.string()
		.trim()
		.regex(decimalShape, 'Give a number such as 12 or 2.5.')
		.transform(Number)
		.refine((value) => value >= min && value <= max, `Give a number from ${min} to ${max}.`)
}

const noAddress = 'Give a mail address such as name@example.com.'
/** At most 64 octets before the at sign (RFC 5321, section 4.5.3.1.1), 63 from dot to dot behind it (RFC 1035, 2.3.4). */
const addressShape = /^[^@]{1,64}@[^.@]{1,63}(?:\.[^.@]{1,63})+$/

/** An address to mail, lower-case; the whole of it at most 254 octets (RFC 5321, section 4.5.3.1.3). */
export const addressField = z
	.string()
	.trim()
	.max(254, noAddress)
	.toLowerCase()
	.regex(addressShape, noAddress)
	.pipe(z.email(noAddress))

/** A field that may be left empty, which is null; else what is wrong is said in the field's own words. */
export const emptyOr = <T extends z.ZodType>(field: T) =>
	z.union([z.literal('').transform(() => null), field], {
		error: (issue) => (issue.code === 'invalid_union' ? issue.errors.at(-1)?.[0]?.message : undefined),
	})

export const onceField = idField<'once'>()

/** A box that is ticked or absent. */
export const tick = z
	.literal('on')
	.optional()
	.transform((value) => value === 'on')
