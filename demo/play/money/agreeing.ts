import { clientAgreements } from '@/db/agreements/studio/of-client'
import type { Stamp } from '@/db/stamp'
import { type AgreementStep, agreements, type CastAgreement } from '../../cast/agreements'
import type { Stage } from '../stage'
import { type Act, momentOn } from '../timeline'
import { issued } from './issued'
import { declined, opened, signed } from './signed'

async function step(stage: Stage, of: CastAgreement, told: AgreementStep, stamp: Stamp): Promise<void> {
	if (told.does === 'issue') return issued(stage, of, told.signBy, stamp)
	const [newest] = await clientAgreements(await stage.designer(), stage.clients.of(of.client), stamp)
	if (newest === undefined) throw new Error(`${of.client}: no agreement was issued`)
	const by = { stage, agreement: newest.id, person: told.by, stamp }
	switch (told.does) {
		case 'open':
			return opened(by)
		case 'sign':
			return signed(by)
		case 'decline':
			return declined(by, told.why)
		default:
			return told satisfies never
	}
}

/** The yearly agreements, each step at its time. */
export const agreeing = (stage: Stage): Act[] =>
	agreements.flatMap((of) =>
		of.story.map((told) => ({
			at: momentOn(stage.today, told.on, told.at),
			run: (stamp: Stamp) => step(stage, of, told, stamp),
		})),
	)
