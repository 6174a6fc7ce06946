import { z } from 'zod'

const point = z.tuple([z.int().min(0).max(1000), z.int().min(0).max(400)])
const mostPoints = 4000

/** A signature drawn by hand, if one wishes: lines of points in a field 1000 wide and 400 high. */
export const strokeSchema = z
	.array(z.array(point).min(1).max(mostPoints))
	.min(1)
	.max(60)
	.refine((lines) => lines.reduce((all, line) => all + line.length, 0) <= mostPoints, 'has too many points')
export type Stroke = z.infer<typeof strokeSchema>
