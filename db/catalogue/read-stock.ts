import { asc, eq, sql } from 'drizzle-orm'
import type { Viewer } from '@/lib/access/viewer'
import type { ClientId, MaterialId } from '@/lib/units/id'
import { read } from '../open'
import { client, stock } from '../schema'
import { denied, visibleTo } from '../viewer'

export type StockRow = {
	/** Whose it is; null for the studio. */
	readonly client: { readonly id: ClientId; readonly name: string } | null
	/** In units of the material. */
	readonly quantity: number
	readonly usesBefore: number
}

/** What storage holds of a material, the studio's first, then each client's own by name. */
export async function readStock(viewer: Viewer, of: MaterialId): Promise<StockRow[]> {
	if (denied(viewer, 'see the catalogue', null) !== null) return []
	return read((db) =>
		db
			.select({ id: client.id, name: client.name, quantity: stock.quantity, usesBefore: stock.usesBefore })
			.from(stock)
			.leftJoin(client, eq(client.id, stock.clientId))
			.where(sql`${stock.materialId} = ${of} AND (${stock.clientId} IS NULL OR ${visibleTo(viewer, stock.clientId)})`)
			.orderBy(sql`${stock.clientId} IS NOT NULL`, asc(client.name))
			.all()
			.map(({ id, name, ...held }) => ({ client: id === null || name === null ? null : { id, name }, ...held })),
	)
}
