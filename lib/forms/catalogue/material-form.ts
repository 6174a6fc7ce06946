import { z } from 'zod'
import type { LengthUnit } from '../../format/length'
import * as material from '../../recipe/material'
import { amountField, decimalField, emptyOr, hexField, idField, onceField, text, tick } from '../fields'
import { traitFields } from './trait-fields'

/** Beyond this the sum of a large job could no longer be counted in whole cents. */
const mostCentsAPiece = 1_000_000

/** A material, how it looks and stands, and the pack that it is bought in. */
export const materialForm = (unit: LengthUnit) =>
	z
		.strictObject({
			once: onceField,
			material: emptyOr(idField<'material'>()),
			name: text(80, { min: 1 }),
			kind: z.enum(material.kinds),
			piece: z.enum(material.pieces),
			role: z.enum(material.roles),
			unit: z.enum(material.units),
			piecesPerUnit: decimalField(0.001, 10_000),
			hex: hexField,
			isPoisonousToPeople: tick,
			isPoisonousToPets: tick,
			hasSmallParts: tick,
			...traitFields(unit),
			supplier: text(80, { min: 1 }),
			size: decimalField(0.001, 100_000),
			price: amountField,
			freightPercent: decimalField(0, 100),
		})
		.refine(({ price, size }) => size <= 0 || price <= size * mostCentsAPiece, {
			message: 'One of these would cost more than 10,000.00: look at the price and at how many are in the pack.',
			path: ['price'],
		})
