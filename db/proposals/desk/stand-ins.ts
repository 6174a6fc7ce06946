import type { Viewer } from '@/lib/access/viewer'
import { standIns } from '@/lib/proposal/design/stand-ins'
import type { StandIn } from '@/lib/proposal/desk/stand-in'
import type { Draft } from '@/lib/proposal/draft'
import type { ContainerId, MaterialId, ProposalId } from '@/lib/units/id'
import { read } from '../../open'
import type { Stamp } from '../../stamp'
import { knownFor } from './known'

type Asked = {
	readonly proposal: ProposalId
	readonly draft: Draft
	readonly material: MaterialId
	readonly container: ContainerId | null
}

/** What can stand in for a material of a draft, the best first; undefined where the proposal or the material is not there. */
export async function findStandIns(
	viewer: Viewer,
	{ proposal, draft, ...of }: Asked,
	stamp: Pick<Stamp, 'at'>,
): Promise<StandIn[] | undefined> {
	const known = read((db) => knownFor(db, viewer, 'see the draft', proposal, stamp))
	return known && standIns(draft, known.facts, of)
}
