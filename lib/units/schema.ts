import { z } from 'zod'
import { type Cents, cents } from './cents'
import { type Day, isDay, type Moment, moment } from './day'
import { type Hex, isHex } from './hex'
import { type Id, id, isId } from './id'

/** JSON to the branded types of the core. */
export const daySchema = z.string().refine((text): text is Day => isDay(text), 'is not a date of the calendar')
export const momentSchema = z.iso.datetime().transform((text): Moment => moment(new Date(text)))
export const hexSchema = z.string().refine((text): text is Hex => isHex(text), 'is not a colour such as #5f7488')
export const centsSchema = z.int().transform((amount): Cents => cents(amount))

export function idSchema<Of extends string>() {
	return z
		.string()
		.refine(isId, 'is not an id')
		.transform((text): Id<Of> => id<Of>(text))
}
