import { viewerOf } from '@/db/viewer'
import type { ClientKey } from '@/demo/cast/clients'
import { stampsFrom } from '@/demo/stamps'
import type { Viewer } from '@/lib/access/viewer'
import { addDays, dayOf, moment } from '@/lib/units/day'
import type { Id } from '@/lib/units/id'
import { amend, issueTo } from './issue-to'
import type { Site } from './server'
import { inRecordOf } from './session'

/** Does what the designer does with agreements, in the site's own record. */
async function byDesigner(
	site: Pick<Site, 'folder' | 'cast'>,
	act: (to: Parameters<typeof issueTo>[0]) => Promise<unknown>,
): Promise<void> {
	const now = moment(new Date())
	const stamps = stampsFrom(`agreements at ${now}`)
	const signBy = addDays(dayOf(now, site.cast.studio.timeZone), 14)
	await inRecordOf(site, async () => {
		const designer: Viewer = await viewerOf(site.cast.people.designer.id)
		await act({ designer, stamp: () => stamps(now), signBy })
	})
}

/** The client's agreement for the year that begins when it was to be signed. */
export async function issuedTo(site: Pick<Site, 'folder' | 'cast'>, key: ClientKey): Promise<Id<'agreement'>> {
	const made: Id<'agreement'>[] = []
	await byDesigner(site, async (to) => {
		made.push(await issueTo(to, site.cast.clients[key].id, addDays(to.signBy, 1)))
	})
	const [id] = made
	if (id === undefined) throw new Error('issuedTo: nothing was issued')
	return id
}

/** The same, issued anew under another law. */
export const amended = (site: Pick<Site, 'folder' | 'cast'>, key: ClientKey, id: Id<'agreement'>): Promise<void> =>
	byDesigner(site, (to) => amend(to, id, site.cast.clients[key].id, addDays(to.signBy, 1)))
