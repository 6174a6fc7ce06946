import { z } from 'zod'
import { holdingSchema, roleSchema } from '../../recipe/material'
import { mostColours } from '../../season/collection/collection'
import { decimalField, emptyOr, hexField, idField, onceField, text } from '../fields'

/** Rows of materials that the form of an extra has. */
export const mostLines = 6

const again = 'Open the collection again.'

const version = z
	.string()
	.regex(/^\d{1,9}$/, again)
	.transform(Number)
const keyOrNew = emptyOr(z.string().regex(/^[a-z0-9]{1,12}$/, again))
const does = z.enum(['keep', 'drop'], again)
const recipe = emptyOr(idField<'recipe'>())
const of = { once: onceField, season: idField<'season'>(), version }

export const collectionWordsForm = z.strictObject({ ...of, title: text(120), letter: text(4000, { lines: true }) })

/** Colours are two lists side by side; a row without a name is left out. */
export const designForm = z
	.strictObject({
		...of,
		design: keyOrNew,
		does,
		name: text(60, { min: 1 }),
		colour: z.array(text(40)).max(mostColours, 'Eight colours are the most.'),
		hex: z.array(hexField).max(mostColours, 'Eight colours are the most.'),
		pot: recipe,
		box: recipe,
		bowl: recipe,
	})
	.refine(({ colour, hex }) => colour.length === hex.length, { message: again, path: ['colour'] })
	.transform(({ colour, hex, pot, box, bowl, ...rest }) => ({
		...rest,
		recipes: { pot, box, bowl },
		palette: colour.flatMap((name, index) => {
			const found = hex[index]
			return name === '' || found === undefined ? [] : [{ name, hex: found }]
		}),
	}))

/** "<material> <role>": what a material does stands beside it. */
const material = emptyOr(
	z.string().transform((value, context) => {
		const [id = '', role = ''] = value.split(' ')
		const read = z.strictObject({ material: idField<'material'>(), role: roleSchema }).safeParse({ material: id, role })
		if (read.success) return read.data
		context.addIssue({ code: 'custom', message: 'Choose a material of the catalogue.' })
		return z.NEVER
	}),
)

const rows = <T extends z.ZodType>(field: T) => z.array(field).max(mostLines, 'Six materials are the most.')

/** Materials, counts and whose they are stand side by side; a row without a material is left out. */
export const collectionExtraForm = z
	.strictObject({
		...of,
		extra: keyOrNew,
		does,
		name: text(80, { min: 1 }),
		words: text(300),
		minutes: decimalField(0, 600),
		material: rows(material),
		count: rows(decimalField(0, 9999)),
		holding: rows(holdingSchema),
	})
	.refine(({ material: { length }, count, holding }) => count.length === length && holding.length === length, {
		message: again,
		path: ['material'],
	})
	.transform(({ material: chosen, count, holding, ...rest }) => ({
		...rest,
		lines: chosen.flatMap((each, index) => {
			const [value, whose] = [count[index], holding[index]]
			if (each === null || value === undefined || whose === undefined) return []
			return [{ ...each, holding: whose, count: { way: 'typed' as const, value } }]
		}),
	}))
