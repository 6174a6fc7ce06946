import { eq } from 'drizzle-orm'
import type { Viewer } from '@/lib/access/viewer'
import type { Id } from '@/lib/units/id'
import { write } from '../open'
import { append } from '../record/append'
import { supplier } from '../schema'
import type { Stamp } from '../stamp'
import { type Denied, denied } from '../viewer'

export type SupplierFields = { readonly name: string; readonly leadDays: number; readonly note: string }
export type SavedSupplier = { readonly ok: true; readonly id: Id<'supplier'> } | Denied

/** A supplier by name: how long they take, and what the studio keeps in mind of them. */
export async function saveSupplier(
	viewer: Viewer,
	{ name, leadDays, note }: SupplierFields,
	stamp: Stamp,
): Promise<SavedSupplier> {
	const no = denied(viewer, 'change the catalogue', null)
	if (no !== null) return no
	return write((tx): SavedSupplier => {
		const [known] = tx.select({ id: supplier.id }).from(supplier).where(eq(supplier.name, name)).all()
		const id = known?.id ?? stamp.id<'supplier'>()
		if (known === undefined) tx.insert(supplier).values({ id, name, leadDays, note }).run()
		else tx.update(supplier).set({ leadDays, note }).where(eq(supplier.id, id)).run()
		const act = known === undefined ? 'supplier added' : 'supplier changed'
		append(tx, stamp, viewer, { act, object: `supplier ${id}`, client: null })
		return { ok: true, id }
	})
}
