import type { Kind, Piece, Role } from '@/lib/recipe/material'
import type { Planned } from '@/lib/recipe/planned'
import type { Grows, RecipeLine } from '@/lib/recipe/recipe'
import type { DesignMaterial } from '@/lib/recipe/traits'
import { hex } from '@/lib/units/hex'
import { id, type MaterialId } from '@/lib/units/id'

export const materialId = (n: number): MaterialId =>
	id<'material'>(`00000000-0000-7000-8000-00000000c${String(n).padStart(3, '0')}`)

export const allYear = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12]

type Said = Partial<Omit<DesignMaterial, 'id' | 'name' | 'kind' | 'piece' | 'role'>>

const plain: Omit<DesignMaterial, 'id' | 'name' | 'kind' | 'piece' | 'role'> = {
	unit: 'stem',
	piecesPerUnit: 1,
	hazards: [],
	inStock: 0,
	form: 'straight stems',
	hex: hex('#8f2c2f'),
	secondHex: null,
	lengthCm: null,
	acrossCm: null,
	had: allYear,
	lasts: allYear,
	zone: null,
	wants: [],
	spacingCm: null,
	rootBallLitres: null,
	kgEach: null,
	watts: null,
	mostEndToEnd: null,
	regulated: '',
}

const sort =
	(kind: Kind, piece: Piece, role: Role, same: Said = {}) =>
	(n: number, name: string, more: Said = {}): DesignMaterial => ({
		...plain,
		...same,
		id: materialId(n),
		name,
		kind,
		piece,
		role,
		...more,
	})

/** The sorts of material that go into a pot; each row adds a name and what its card says. */
export const branch = sort('fresh', 'branch', 'thriller', { lengthCm: 120, kgEach: 0.06 })
export const green = sort('fresh', 'green', 'filler', { form: 'flat fan', hex: hex('#3d6147'), kgEach: 0.14 })
export const trailing = sort('fresh', 'green', 'spiller', { form: 'trailing', hex: hex('#566b3d'), kgEach: 0.09 })
export const cluster = sort('ornament', 'cluster kept', 'accent', { unit: 'piece', form: 'cluster', kgEach: 0.35 })
export const accent = sort('ornament', 'accent', 'accent', { unit: 'piece', form: 'globe', kgEach: 0.04 })
export const berry = sort('faux', 'accent', 'accent', { form: 'berries', kgEach: 0.03, hazards: ['small parts'] })
export const plant = sort('live', 'plant', 'filler', {
	unit: 'piece',
	form: 'foliage',
	spacingCm: 22,
	rootBallLitres: 1.2,
})
export const lights = sort('light', 'string', 'accent', { unit: 'string', form: 'lights', watts: 24, mostEndToEnd: 5 })
export const fixing = sort('mechanics', 'none', 'mechanics', { unit: 'piece', form: 'unseen' })

export const by = (materials: readonly DesignMaterial[]): ReadonlyMap<MaterialId, DesignMaterial> =>
	new Map(materials.map((material) => [material.id, material]))

export const line = (material: DesignMaterial, grows: Grows): RecipeLine => ({
	material: material.id,
	role: material.role,
	holding: 'sold',
	grows,
})

export const put = (material: DesignMaterial, count: number): Planned => ({ material, role: material.role, count })
