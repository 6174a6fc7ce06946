import { and, asc, eq, isNull, ne, sql } from 'drizzle-orm'
import type { Viewer } from '@/lib/access/viewer'
import type { Id } from '@/lib/units/id'
import { read, write } from '../open'
import { append } from '../record/append'
import { pack, supplier } from '../schema'
import type { Stamp } from '../stamp'
import { type Denied, denied, hidden } from '../viewer'

export type SupplierFields = { readonly name: string; readonly leadDays: number; readonly note: string }
export type SupplierRow = SupplierFields & {
	readonly id: Id<'supplier'>
	/** How many materials are bought there now. */
	readonly materials: number
}
export type SavedSupplier =
	| { readonly ok: true; readonly id: Id<'supplier'> }
	| { readonly ok: false; readonly why: 'name taken' }
	| Denied

export async function listSuppliers(viewer: Viewer): Promise<SupplierRow[]> {
	if (denied(viewer, 'see the catalogue', null) !== null) return []
	const { id, name, leadDays, note } = supplier
	return read((db) =>
		db
			.select({ id, name, leadDays, note, materials: sql<number>`count(DISTINCT ${pack.materialId})` })
			.from(supplier)
			.leftJoin(pack, and(eq(pack.supplierId, id), isNull(pack.retiredAt)))
			.groupBy(id)
			.orderBy(asc(name))
			.all(),
	)
}

/** A new supplier, or the one named by `of` changed: how long they take, and what the studio keeps in mind of them. */
export async function saveSupplier(
	viewer: Viewer,
	of: Id<'supplier'> | null,
	fields: SupplierFields,
	stamp: Stamp,
): Promise<SavedSupplier> {
	const no = denied(viewer, 'change the catalogue', null)
	if (no !== null) return no
	return write((tx): SavedSupplier => {
		const id = of ?? stamp.id<'supplier'>()
		const namesake = and(eq(supplier.name, fields.name), ne(supplier.id, id))
		if (tx.select().from(supplier).where(namesake).all().length > 0) return { ok: false, why: 'name taken' }
		if (of === null)
			tx.insert(supplier)
				.values({ id, ...fields })
				.run()
		else if (tx.update(supplier).set(fields).where(eq(supplier.id, of)).run().changes === 0) return hidden
		const act = of === null ? 'supplier added' : 'supplier changed'
		append(tx, stamp, viewer, { act, object: `supplier ${id}`, client: null })
		return { ok: true, id }
	})
}
