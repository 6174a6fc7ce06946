import { and, eq, isNull } from 'drizzle-orm'
import type { Viewer } from '@/lib/access/viewer'
import type { ClientId, MaterialId } from '@/lib/units/id'
import { write } from '../open'
import { append } from '../record/append'
import { client, material, stock } from '../schema'
import type { Stamp } from '../stamp'
import { type Denied, denied, hidden } from '../viewer'

export type Held = {
	readonly material: MaterialId
	/** Null for what is the studio's; else the client whose own it is. */
	readonly client: ClientId | null
	/** In units of the material. */
	readonly quantity: number
	readonly usesBefore: number
}

/** What storage holds of a material, as counted: the count before is replaced. */
export async function keepStock(
	viewer: Viewer,
	{ material: of, client: owner, quantity, usesBefore }: Held,
	stamp: Stamp,
): Promise<{ readonly ok: true } | Denied> {
	const no = denied(viewer, 'change the catalogue', null)
	if (no !== null) return no
	return write((tx) => {
		const isThere = tx.select().from(material).where(eq(material.id, of)).all().length > 0
		const isTheirs = owner === null || tx.select().from(client).where(eq(client.id, owner)).all().length > 0
		if (!isThere || !isTheirs) return hidden
		const whose = owner === null ? isNull(stock.clientId) : eq(stock.clientId, owner)
		const counted = { quantity, usesBefore }
		const here = and(eq(stock.materialId, of), whose)
		if (tx.update(stock).set(counted).where(here).run().changes === 0)
			tx.insert(stock)
				.values({ id: stamp.id<'stock'>(), materialId: of, clientId: owner, ...counted })
				.run()
		append(tx, stamp, viewer, { act: 'stock changed', object: `material ${of}`, client: owner, facts: { quantity } })
		return { ok: true as const }
	})
}
