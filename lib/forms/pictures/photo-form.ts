import { z } from 'zod'
import { colourForm } from '../client-forms'
import { idField, onceField } from '../fields'

const fraction = z
	.string()
	.regex(/^(0(\.\d+)?|1(\.0+)?)$/)
	.transform(Number)

/** A photo to be looked at, and where in it something white was tapped, as fractions of its width and height. */
export const photoForm = z
	.object({ photo: z.instanceof(Blob), whiteX: fraction.optional(), whiteY: fraction.optional() })
	.transform(({ photo, whiteX: x, whiteY: y }) => ({
		photo,
		whiteAt: x === undefined || y === undefined ? null : { x, y },
	}))

const { name, hex, side } = colourForm.shape
const most = 12

/** Several colours of a building in one go. */
export const coloursForm = z
	.strictObject({
		once: onceField,
		client: idField<'client'>(),
		place: idField<'place'>(),
		name: z.array(name).min(1, 'Keep at least one colour.').max(most, 'Twelve colours are the most.'),
		hex: z.array(hex).max(most),
		side: z.array(side).max(most),
		spotX: z.array(fraction).max(most),
		spotY: z.array(fraction).max(most),
	})
	.transform(({ name: names, hex: hexes, side: sides, spotX, spotY, ...rest }, context) => {
		const colours = names.flatMap((called, index) => {
			const [of, seen, x, y] = [hexes[index], sides[index], spotX[index], spotY[index]]
			if (of === undefined || seen === undefined || x === undefined || y === undefined) return []
			return [{ name: called, hex: of, side: seen, spot: { x, y } }]
		})
		if (colours.length !== names.length || hexes.length !== names.length)
			context.addIssue({ code: 'custom', message: 'Look at the photo again: a colour is not whole.', path: ['hex'] })
		return { ...rest, colours }
	})

export const dropColourForm = z.strictObject({
	once: onceField,
	client: idField<'client'>(),
	colour: idField<'site colour'>(),
})

export const renameColourForm = z.strictObject({
	once: onceField,
	client: idField<'client'>(),
	colour: idField<'site colour'>(),
	name,
})

export const mergeColoursForm = z.strictObject({
	once: onceField,
	client: idField<'client'>(),
	colour: idField<'site colour'>(),
	other: idField<'site colour'>(),
})
