import { recordPaper } from '@/db/agreements/studio/paper'
import { agreementDesk } from '@/db/agreements/studio/read-desk'
import { viewerOf } from '@/db/viewer'
import { must } from '@/demo/play/must'
import { stampsFrom } from '@/demo/stamps'
import { dayOf, moment } from '@/lib/units/day'
import type { Id } from '@/lib/units/id'
import type { Site } from './server'
import { inRecordOf } from './session'

/** Both have signed: the client on paper, in the site's own record. */
export async function onPaper(site: Pick<Site, 'folder' | 'cast'>, agreement: Id<'agreement'>): Promise<void> {
	const now = moment(new Date())
	const stamps = stampsFrom(`signed on paper: ${agreement}`)
	const stamp = () => stamps(now)
	await inRecordOf(site, async () => {
		const designer = await viewerOf(site.cast.people.designer.id)
		const document = (await agreementDesk(designer, agreement, stamp()))?.row.issued
		if (document === undefined || document === null) throw new Error('onPaper: nothing was issued')
		const signedOn = dayOf(now, site.cast.studio.timeZone)
		const given = { signer: 'Somebody', signedOn, scan: Buffer.from('a picture of a page'), once: stamp().id<'once'>() }
		must('paper', await recordPaper(designer, { agreement, document, ...given }, stamp()))
	})
}
