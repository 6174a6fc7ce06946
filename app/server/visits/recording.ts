import 'server-only'
import type { KeptVisit } from '@/db/clients/visits/keep-visit'
import type { Denied } from '@/db/viewer'
import { decide } from '@/lib/access/decide'
import type { Viewer } from '@/lib/access/viewer'
import type { Day } from '@/lib/units/day'
import type { VisitCommand } from '@/lib/visit/decide'
import { visitTold } from '@/lib/visit/told'
import type { Went } from './keeping'

/** Staff record visits; to all others there is no such page. */
export async function mayRecord(who: Viewer): Promise<Denied | null> {
	return decide(who, 'record visits', null) === 'may' ? null : { ok: false, why: 'hidden' }
}

/** @throws without the day that the form must have asked for */
export function commandOf(step: VisitCommand['do'], day: Day | null): VisitCommand {
	if (step === 'drop') return { do: step }
	if (day === null) throw new Error(`commandOf: ${step} without a day`)
	return { do: step, day }
}

const notApproved =
	'Nobody has approved this season’s design, so it cannot have gone in. Have the answer written down first, or choose another kind of visit.'

/** What became of a visit that the studio wrote down: its page, or the form with what is wrong beside the field. */
export function wentOf(kept: KeptVisit, told: VisitCommand['do']): Went {
	if (kept.ok) return { to: `/studio/visits/${kept.visit}?told=${told}` }
	switch (kept.why) {
		case 'hidden':
		case 'forbidden':
			return { ok: false, why: kept.why }
		case 'not approved':
			return { errors: { kind: notApproved } }
		case 'dropped':
		case 'made already':
			return { errors: { form: visitTold[kept.why] } }
		default:
			return { errors: { day: visitTold[kept.why] } }
	}
}
