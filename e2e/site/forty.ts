import { v7 } from 'uuid'
import { viewerOf } from '@/db/viewer'
import { manyClients } from '@/demo/many'
import { moment } from '@/lib/units/day'
import { id } from '@/lib/units/id'
import type { Site } from './server'
import { inRecordOf } from './session'

/** Forty clients more in the site's record, each with a front and containers; none of them begun. */
export async function fortyClients(site: Pick<Site, 'folder' | 'cast'>): Promise<void> {
	const at = moment(new Date())
	const stamp = {
		at,
		id: <Of extends string>() => id<Of>(v7()),
		salt: () => crypto.getRandomValues(new Uint8Array(16)),
	}
	const designer = site.cast.people.designer.id
	await inRecordOf(site, async () => manyClients(await viewerOf(designer), 40, stamp))
}
