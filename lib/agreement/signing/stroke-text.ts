import { z } from 'zod'
import { type Stroke, strokeSchema } from './stroke'

/** Lines as a form carries them, in signs that need no escape: "12.34-13.40_500.20". */
export const strokeText = (stroke: Stroke): string =>
	stroke.map((line) => line.map(([x, y]) => `${x}.${y}`).join('-')).join('_')

const shape = /^\d{1,4}\.\d{1,3}(?:[-_]\d{1,4}\.\d{1,3})*$/
const mostSigns = 40_000
const unkept = 'The drawing is more than we can keep. Clear it and draw it simpler, or leave it out.'

/** What was drawn; null for nothing. */
export const strokeField = z.string().transform((text, context): Stroke | null => {
	if (text === '') return null
	const lines = text.length <= mostSigns && shape.test(text) ? text.split('_') : []
	const points = lines.map((line) => line.split('-').map((point) => point.split('.').map(Number)))
	const read = strokeSchema.safeParse(points)
	if (read.success) return read.data
	context.addIssue({ code: 'custom', message: unkept })
	return z.NEVER
})
