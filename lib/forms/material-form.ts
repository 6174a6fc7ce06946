import { z } from 'zod'
import * as material from '../recipe/material'
import { decimalField, emptyOr, hexField, idField, moneyField, onceField, text, tick } from './fields'

/** A material and the pack that it is bought in. */
export const materialForm = z.strictObject({
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
	supplier: text(80, { min: 1 }),
	size: decimalField(0.001, 100_000),
	price: moneyField,
	freightPercent: decimalField(0, 100),
})
