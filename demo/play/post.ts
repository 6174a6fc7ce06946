import { z } from 'zod'
import { readAgreement } from '@/db/agreements/read'
import { type Leased, leaseMail, settleMail } from '@/db/outbox/lease'
import type { Stamp } from '@/db/stamp'
import { seasonPage } from '@/db/studio/season-page'
import { viewerOf } from '@/db/viewer'
import { idSchema } from '@/lib/units/schema'
import type { Stage } from './stage'
import { type Act, momentOn } from './timeline'

const about = z.object({ proposal: z.string() })
const aboutAgreement = z.object({ agreement: idSchema<'agreement'>() })

/** Winter proposals that still wait for an answer when the play ends. */
async function waiting(stage: Stage, stamp: Stamp): Promise<ReadonlySet<string>> {
	const page = await seasonPage(await stage.designer(), { season: stage.seasons.of('winter'), page: 1 }, stamp)
	const rows = page?.rows ?? []
	return new Set(rows.filter(({ state }) => state === 'waiting for an answer').map(({ id }) => id))
}

async function asksToSign(stage: Stage, { facts }: Leased, stamp: Stamp): Promise<boolean> {
	const { agreement } = aboutAgreement.parse(facts)
	const page = await readAgreement(await stage.designer(), agreement, stamp)
	return page?.state.is === 'to be signed'
}

/** The mail of the past is delivered; what asks for an answer or a signature is left to a sender that is running. */
async function deliver(stage: Stage, stamp: Stamp): Promise<void> {
	const open = await waiting(stage, stamp)
	const isLeft = async (mail: Leased) => {
		if (mail.message === 'agreement issued') return asksToSign(stage, mail, stamp)
		return mail.message === 'proposal published' && open.has(about.parse(mail.facts).proposal)
	}
	const system = await viewerOf('system')
	const all = await leaseMail(system, 1000, stamp)
	for (const mail of all) if (!(await isLeft(mail))) await settleMail(system, mail, 'sent', stamp)
}

export const post = (stage: Stage): Act[] => [
	{ at: momentOn(stage.today, -1, '21:45'), run: (stamp) => deliver(stage, stamp) },
]
