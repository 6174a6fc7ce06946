import { approve } from '@/db/proposals/answers/approve'
import { askForChange } from '@/db/proposals/answers/ask-for-change'
import type { Answering } from '@/db/proposals/answers/open'
import { skipSeason } from '@/db/proposals/answers/skip'
import { readOffer } from '@/db/proposals/read-offer'
import { markSeen } from '@/db/proposals/seen'
import { viewerOf } from '@/db/viewer'
import type { Viewer } from '@/lib/access/viewer'
import type { CastNote, Step } from '../../cast/proposals/shape'
import { must } from '../must'
import type { Scene } from '../stage'

type Does<Kind extends Step['does']> = Extract<Step, { does: Kind }>

async function answering({ client, id, stamp }: Scene, contact: Viewer): Promise<Answering> {
	const page = await readOffer(contact, id(), stamp)
	if (page === undefined) throw new Error(`${client}: the contact finds no offer`)
	return { proposal: id(), revision: page.hash, once: stamp.id<'once'>(), browser: 'the play' }
}

async function yes(scene: Scene, contact: Viewer, step: Does<'approve'>): Promise<void> {
	const { option, extras = [], leftOut = [], purchaseOrder = '' } = step
	const wanted = { option, places: {}, extras, leftOut: leftOut.map(scene.stage.containers.of), purchaseOrder }
	must(scene.client, await approve(contact, { ...(await answering(scene, contact)), ...wanted }, scene.stamp))
}

async function change(scene: Scene, contact: Viewer, step: Does<'ask for a change'>): Promise<void> {
	const partOf = ([about]: CastNote) => (about === 'whole' ? about : `container ${scene.stage.containers.of(about)}`)
	const notes = step.notes.map((note) => ({ part: partOf(note), words: note[1] }))
	must(scene.client, await askForChange(contact, { ...(await answering(scene, contact)), notes }, scene.stamp))
}

/** What a contact does. */
export async function theirs(scene: Scene, step: Extract<Step, { by: unknown }>): Promise<void> {
	const { stage, client, stamp } = scene
	const contact = await viewerOf(stage.people.of(step.by))
	switch (step.does) {
		case 'see':
			return markSeen(contact, scene.id(), stamp)
		case 'approve':
			return yes(scene, contact, step)
		case 'ask for a change':
			return change(scene, contact, step)
		case 'skip':
			must(client, await skipSeason(contact, { ...(await answering(scene, contact)), why: step.why }, stamp))
			return
		default:
			return step satisfies never
	}
}
