import { z } from 'zod'
import { usualHolding, usualWay } from '../../recipe/library/usual'
import { type Holding, holdings, type Role, roles } from '../../recipe/material'
import { type Grows, type RecipeLine, ways } from '../../recipe/recipe'
import type { DesignMaterial } from '../../recipe/traits'
import { id, isId, type MaterialId } from '../../units/id'
import { decimalField } from '../fields'

/** One row of the form as it was typed; an empty role, holding or way is what is usual for the material. */
export type Row = {
	readonly at: string
	readonly material: string
	readonly role: '' | Role
	readonly holding: '' | Holding
	readonly way: '' | Grows['way']
	readonly count: string
	readonly holds: string
}
export const rowFields = ['at', 'material', 'role', 'holding', 'way', 'count', 'holds'] as const

const usual = <Values extends readonly [string, ...string[]]>(values: Values, says: string) =>
	z.union([z.literal(''), z.enum(values)], says)
const short = z.string().max(40, 'Keep this short.')

export const rowShape = {
	at: short,
	material: short,
	role: usual(roles, 'Choose a role.'),
	holding: usual(holdings, 'Choose whose it is.'),
	way: usual(ways, 'Choose how it grows.'),
	count: z.string().max(10_001),
	holds: z.string().regex(/^\d{0,2}$/, 'Choose a line of this recipe, or the opening.'),
} as const

export type Known = ReadonlyMap<MaterialId, DesignMaterial>
export type Said = (row: number, field: (typeof rowFields)[number], says: string) => undefined

const countField = decimalField(0.001, 9999)
const shareField = decimalField(0.1, 100)

function materialIn(row: Row, index: number, known: Known, say: Said): DesignMaterial | undefined {
	const found = isId(row.material) ? known.get(id<'material'>(row.material)) : undefined
	return found ?? say(index, 'material', 'Choose a material of the list.')
}

/** What another row names; undefined where it names none. */
function heldBy({ holds }: Row, rows: readonly Row[], index: number, say: Said): MaterialId | null | undefined {
	if (holds === '') return null
	const held = rows[Number(holds) - 1]?.material ?? ''
	return isId(held) ? id<'material'>(held) : say(index, 'holds', 'This line has no material: choose another.')
}

function growsIn(row: Row, way: Grows['way'], index: number, rows: readonly Row[], say: Said): Grows | undefined {
	const read = (way === 'spacing' ? shareField : countField).safeParse(row.count)
	if (!read.success) return say(index, 'count', read.error.issues[0]?.message ?? 'Give a number.')
	if (way === 'spacing') return { way, share: Math.round(read.data * 10) / 1000 }
	if (way !== 'held') return { way, count: read.data }
	const holds = heldBy(row, rows, index, say)
	return holds === undefined ? undefined : { way, count: read.data, holds }
}

/** The line that a row comes to; undefined, and said, where it comes to none. */
export function lineIn(index: number, rows: readonly Row[], known: Known, say: Said): RecipeLine | undefined {
	const row = rows[index]
	const material = row && materialIn(row, index, known, say)
	if (row === undefined || material === undefined) return undefined
	const role = row.role === '' ? material.role : row.role
	const way = row.way === '' ? usualWay(material, role) : row.way
	const grows = growsIn(row, way, index, rows, say)
	const holding = row.holding === '' ? usualHolding(material.kind) : row.holding
	return grows && { material: material.id, role, holding, grows }
}
