import { and, eq, isNull } from 'drizzle-orm'
import type { Viewer } from '@/lib/access/viewer'
import type { Day } from '@/lib/units/day'
import type { ClientId } from '@/lib/units/id'
import { write } from '../open'
import { append } from '../record/append'
import { client } from '../schema'
import type { Stamp } from '../stamp'
import { type Denied, denied, hidden } from '../viewer'

export type ClientFields = {
	readonly kind: 'business' | 'household'
	readonly name: string
	readonly netDays: 15 | 30
	readonly exemptCertificate: string | null
	readonly exemptExpires: Day | null
	readonly studioNote: string
}
export type SavedClient = { readonly ok: true; readonly id: ClientId } | Denied

/** A new client, or the one named by `of` changed. */
export async function saveClient(
	viewer: Viewer,
	of: ClientId | null,
	fields: ClientFields,
	stamp: Stamp,
): Promise<SavedClient> {
	const no = denied(viewer, 'change clients', of)
	if (no !== null) return no
	return write((tx): SavedClient => {
		const id = of ?? stamp.id<'client'>()
		if (of === null)
			tx.insert(client)
				.values({ id, ...fields, createdAt: stamp.at })
				.run()
		else if (
			tx
				.update(client)
				.set(fields)
				.where(and(eq(client.id, of), isNull(client.archivedAt)))
				.run().changes === 0
		)
			return hidden
		append(tx, stamp, viewer, {
			act: of === null ? 'client added' : 'client changed',
			object: `client ${id}`,
			client: id,
		})
		return { ok: true, id }
	})
}
