import { z } from 'zod'
import { type Leased, leaseMail, settleMail } from '@/db/outbox/lease'
import type { Stamp } from '@/db/stamp'
import { seasonPage } from '@/db/studio/season-page'
import { viewerOf } from '@/db/viewer'
import type { Stage } from './stage'
import { type Act, momentOn } from './timeline'

const about = z.object({ proposal: z.string() })

/** Winter proposals that still wait for an answer when the play ends. */
async function waiting(stage: Stage, stamp: Stamp): Promise<ReadonlySet<string>> {
	const page = await seasonPage(await stage.designer(), { season: stage.seasons.of('winter'), page: 1 }, stamp)
	const rows = page?.rows ?? []
	return new Set(rows.filter(({ state }) => state === 'waiting for an answer').map(({ id }) => id))
}

/** The mail of the past is delivered; what asks for an answer is left to a sender that is running. */
async function deliver(stage: Stage, stamp: Stamp): Promise<void> {
	const open = await waiting(stage, stamp)
	const isLeft = ({ message, facts }: Leased) =>
		message === 'proposal published' && open.has(about.parse(facts).proposal)
	const system = await viewerOf('system')
	const all = await leaseMail(system, 1000, stamp)
	for (const mail of all) if (!isLeft(mail)) await settleMail(system, mail, 'sent', stamp)
}

export const post = (stage: Stage): Act[] => [
	{ at: momentOn(stage.today, -1, '21:45'), run: (stamp) => deliver(stage, stamp) },
]
