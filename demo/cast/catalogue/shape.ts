import type { Hazard, Kind, Piece, Role, Unit } from '@/lib/recipe/material'
import type { ClientKey } from '../clients'

/** Who sells to the studio: names, lead times and remarks of our own. */
export const suppliers = {
	stems: {
		name: 'Willowbight Stem Growers',
		leadDays: 10,
		note: 'Cuts to order on Mondays; short bundles after frost.',
	},
	greens: { name: 'Tamsin Hollow Evergreens', leadDays: 7, note: 'Ask for second-flush tips, a tenth under list.' },
	trimmings: { name: 'Harl & Wicket Trimmings', leadDays: 14, note: 'Whole cartons only. Returns until the tenth.' },
	lights: { name: 'Ebbside Electric Supply', leadDays: 5, note: 'Counter price if fetched.' },
	plants: { name: 'Fallowmere Nursery', leadDays: 6, note: 'Second choice of kale is good enough for the backs.' },
} as const
export type SupplierKey = keyof typeof suppliers

export type CastMaterial = {
	readonly name: string
	readonly kind: Kind
	readonly piece: Piece
	readonly role: Role
	readonly unit: Unit
	readonly piecesPerUnit: number
	readonly hex: string
	readonly hazards: readonly Hazard[]
	readonly supplier: SupplierKey
	readonly size: number
	readonly priceCents: number
	readonly freightPercent: number
	/** In storage: the studio's, or one client's own. */
	readonly stock?: { readonly quantity: number; readonly usesBefore: number; readonly client?: ClientKey }
}

type More = Partial<Omit<CastMaterial, 'name' | 'hex' | 'size' | 'priceCents'>>
type Sort = Omit<CastMaterial, 'name' | 'hex' | 'size' | 'priceCents'>

const sort =
	(same: Sort) =>
	(name: string, hex: string, size: number, priceCents: number, more: More = {}): CastMaterial => ({
		...same,
		name,
		hex,
		size,
		priceCents,
		...more,
	})

const plain = { unit: 'stem', piecesPerUnit: 1, hazards: [], freightPercent: 0 } as const

/** The sorts of material that the studio buys; each row adds a name, a colour, and a pack with its price. */
export const branch = sort({ ...plain, kind: 'fresh', piece: 'branch', role: 'thriller', supplier: 'stems' })
export const green = sort({ ...plain, kind: 'fresh', piece: 'green', role: 'filler', supplier: 'greens' })
export const globes = sort({
	...plain,
	kind: 'ornament',
	piece: 'cluster to make',
	role: 'accent',
	unit: 'piece',
	supplier: 'trimmings',
	freightPercent: 6,
})
export const trim = sort({
	...plain,
	kind: 'ornament',
	piece: 'accent',
	role: 'accent',
	unit: 'piece',
	supplier: 'trimmings',
	freightPercent: 6,
})
export const faux = sort({
	...plain,
	kind: 'faux',
	piece: 'accent',
	role: 'accent',
	supplier: 'trimmings',
	freightPercent: 6,
	hazards: ['small parts'],
})
export const string = sort({
	...plain,
	kind: 'light',
	piece: 'string',
	role: 'accent',
	unit: 'string',
	supplier: 'lights',
})
export const plant = sort({ ...plain, kind: 'live', piece: 'plant', role: 'filler', unit: 'piece', supplier: 'plants' })
export const fixing = sort({
	...plain,
	kind: 'mechanics',
	piece: 'none',
	role: 'mechanics',
	unit: 'piece',
	supplier: 'trimmings',
})
