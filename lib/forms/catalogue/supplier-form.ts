import { z } from 'zod'
import { decimalField, emptyOr, idField, onceField, text } from '../fields'

export const supplierForm = z.strictObject({
	once: onceField,
	supplier: emptyOr(idField<'supplier'>()),
	name: text(80, { min: 1 }),
	leadDays: decimalField(0, 365).refine(Number.isInteger, 'Give a whole number of days.'),
	note: text(300, { lines: true }),
})
