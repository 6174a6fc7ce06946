import { and, asc, eq, isNull, ne } from 'drizzle-orm'
import type { Viewer } from '@/lib/access/viewer'
import type { MaterialId } from '@/lib/units/id'
import { read, type Tx, write } from '../open'
import { weighDrafts } from '../proposals/desk/weigh-drafts'
import { append } from '../record/append'
import { material, pack, stock, supplier, trait } from '../schema'
import type { Stamp } from '../stamp'
import { type Denied, denied, hidden } from '../viewer'

export type MaterialRow = {
	readonly material: typeof material.$inferSelect
	readonly trait: TraitFields | null
	readonly pack: typeof pack.$inferSelect | null
	readonly supplier: string | null
	readonly inStock: number
}

/** By role and name, with the pack and what storage holds. */
export async function listMaterials(viewer: Viewer): Promise<MaterialRow[]> {
	if (denied(viewer, 'see the catalogue', null) !== null) return []
	return read((db) =>
		db
			.select({ material, trait, pack, supplier: supplier.name, quantity: stock.quantity })
			.from(material)
			.leftJoin(trait, eq(trait.materialId, material.id))
			.leftJoin(pack, and(eq(pack.materialId, material.id), isNull(pack.retiredAt)))
			.leftJoin(supplier, eq(supplier.id, pack.supplierId))
			.leftJoin(stock, and(eq(stock.materialId, material.id), isNull(stock.clientId)))
			.where(isNull(material.retiredAt))
			.orderBy(asc(material.role), asc(material.name))
			.all()
			.map(({ quantity, ...row }) => ({ ...row, inStock: quantity ?? 0 })),
	)
}

export type MaterialFields = Omit<typeof material.$inferInsert, 'id' | 'retiredAt'> & TraitFields
/** How a piece looks, and what it needs and does outside. */
export type TraitFields = Omit<typeof trait.$inferSelect, 'materialId'>
export type PackFields = {
	readonly supplier: string
	readonly size: number
	readonly priceCents: number
	readonly freightPercent: number
}
export type SavedMaterial =
	| { readonly ok: true; readonly id: MaterialId }
	| { readonly ok: false; readonly why: 'name taken' }
	| Denied

function supplierNamed(tx: Tx, name: string, stamp: Stamp) {
	const [known] = tx.select({ id: supplier.id }).from(supplier).where(eq(supplier.name, name)).all()
	if (known !== undefined) return known.id
	const id = stamp.id<'supplier'>()
	tx.insert(supplier).values({ id, name, leadDays: 7, note: '' }).run()
	return id
}

function keepTraits(tx: Tx, materialId: MaterialId, fields: MaterialFields): void {
	const { form, secondHex, lengthCm, acrossCm, hadFrom, hadTo, lastsFrom, lastsTo } = fields
	const { zone, needs, spacingCm, rootBallLitres, kgEach, watts, mostEndToEnd, regulated } = fields
	const seen = { form, secondHex, lengthCm, acrossCm, hadFrom, hadTo, lastsFrom, lastsTo }
	const row = { ...seen, zone, needs, spacingCm, rootBallLitres, kgEach, watts, mostEndToEnd, regulated }
	tx.insert(trait)
		.values({ materialId, ...row })
		.onConflictDoUpdate({ target: trait.materialId, set: row })
		.run()
}

/** The pack that is bought from now on; the one before is put aside. */
function keepPack(tx: Tx, of: MaterialId, { supplier: name, ...fields }: PackFields, stamp: Stamp): void {
	tx.update(pack)
		.set({ retiredAt: stamp.at })
		.where(and(eq(pack.materialId, of), isNull(pack.retiredAt)))
		.run()
	const row = { id: stamp.id<'pack'>(), materialId: of, supplierId: supplierNamed(tx, name, stamp) }
	tx.insert(pack)
		.values({ ...row, ...fields })
		.run()
}

/** A new material with its pack, or one of the catalogue changed. */
export async function saveMaterial(
	viewer: Viewer,
	of: MaterialId | null,
	fields: MaterialFields,
	sold: PackFields,
	stamp: Stamp,
): Promise<SavedMaterial> {
	const no = denied(viewer, 'change the catalogue', null)
	if (no !== null) return no
	return write((tx): SavedMaterial => {
		const id = of ?? stamp.id<'material'>()
		const namesake = and(eq(material.name, fields.name), ne(material.id, id))
		if (tx.select().from(material).where(namesake).all().length > 0) return { ok: false, why: 'name taken' }
		if (of === null)
			tx.insert(material)
				.values({ id, ...fields })
				.run()
		else if (tx.update(material).set(fields).where(eq(material.id, of)).run().changes === 0) return hidden
		keepTraits(tx, id, fields)
		keepPack(tx, id, sold, stamp)
		weighDrafts(tx, { material: id })
		const act = of === null ? 'material added' : 'material changed'
		append(tx, stamp, viewer, { act, object: `material ${id}`, client: null })
		return { ok: true, id }
	})
}
