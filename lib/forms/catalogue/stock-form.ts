import { z } from 'zod'
import { decimalField, emptyOr, idField, onceField } from '../fields'

/** What storage holds of a material, as it was counted: the studio's, or one client's own. */
export const stockForm = z.strictObject({
	once: onceField,
	material: idField<'material'>(),
	client: emptyOr(idField<'client'>()),
	quantity: decimalField(0, 100_000),
	usesBefore: decimalField(0, 100).refine(Number.isInteger, 'Give a whole number of seasons.'),
})
