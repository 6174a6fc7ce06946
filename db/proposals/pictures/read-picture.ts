import type { Viewer } from '@/lib/access/viewer'
import type { Scene } from '@/lib/picture/scene'
import { type Shown, sceneOf } from '@/lib/proposal/offer/scene-of'
import type { ProposalId } from '@/lib/units/id'
import { read } from '../../open'
import type { Stamp } from '../../stamp'
import { offerIn, revisionOf } from '../documents'
import { findProposal } from '../find'
import { answerTo } from '../read-offer'

type Asked = {
	readonly proposal: ProposalId
	/** The beginning of the revision's hash: what is drawn of it never changes. */
	readonly revision: string
	readonly shown: Shown
	/** Where no option is named, the approved one or the first is shown. */
	readonly isOfWhatStands: boolean
}

/** What a picture of the standing revision shows; undefined where there is none, or none that the viewer may see. */
export async function readPicture(
	viewer: Viewer,
	{ proposal, revision, shown, isOfWhatStands }: Asked,
	stamp: Pick<Stamp, 'at'>,
): Promise<Scene | undefined> {
	return read((db) => {
		const found = findProposal(db, viewer, 'see the proposal', proposal, stamp)
		if (!found.ok || found.row.revisionHash === null || !found.row.revisionHash.startsWith(revision)) return undefined
		const standing = revisionOf(db, proposal, found.row.revisionNumber)
		const offer = standing && offerIn(db, standing)
		if (standing === undefined || offer === undefined) return undefined
		if (!isOfWhatStands || shown.option !== null) return sceneOf(offer, shown)
		const option = answerTo(db, standing)?.option ?? offer.options[0]?.key ?? null
		return sceneOf(offer, { ...shown, option })
	})
}
