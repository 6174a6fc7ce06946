import { noteLapses } from '@/db/house/lapse'
import { beginProposal } from '@/db/proposals/begin'
import { readDraft, saveDraft } from '@/db/proposals/draft'
import { publish } from '@/db/proposals/publish'
import { remind } from '@/db/proposals/remind'
import { steer } from '@/db/proposals/steer'
import { viewerOf } from '@/db/viewer'
import type { Viewer } from '@/lib/access/viewer'
import type { Draft } from '@/lib/proposal/draft'
import type { Step } from '../../cast/proposals/shape'
import { must } from '../must'
import type { Scene } from '../stage'
import { extraOf, writtenOver } from './draft'

async function kept(scene: Scene, designer: Viewer) {
	const found = await readDraft(designer, scene.id(), scene.stamp)
	if (found === undefined) throw new Error(`${scene.client}: there is no draft`)
	return found
}

async function save(scene: Scene, designer: Viewer, next: (draft: Draft) => Draft): Promise<void> {
	const { version, draft } = await kept(scene, designer)
	must(scene.client, await saveDraft(designer, { proposal: scene.id(), version, draft: next(draft) }, scene.stamp))
}

async function begin(scene: Scene, designer: Viewer): Promise<void> {
	const { stage, quarter, client, of, stamp } = scene
	const where = { client: stage.clients.of(client), season: stage.seasons.of(quarter) }
	scene.begun(must(client, await beginProposal(designer, where, stamp)).id)
	await save(scene, designer, (draft) => writtenOver(draft, of, stage))
}

async function send(scene: Scene, designer: Viewer): Promise<void> {
	const { version } = await kept(scene, designer)
	const once = scene.stamp.id<'once'>()
	must(scene.client, await publish(designer, { proposal: scene.id(), version, once }, scene.stamp))
}

/** What the studio does. */
export async function ours(scene: Scene, step: Exclude<Step, { by: unknown }>): Promise<void> {
	const { stage, client, stamp } = scene
	const designer = await stage.designer()
	switch (step.does) {
		case 'save':
			return begin(scene, designer)
		case 'redraft':
			return save(scene, designer, (draft) => ({
				...draft,
				letter: step.letter,
				extras: step.extras.map((extra) => extraOf(stage, extra)),
			}))
		case 'publish':
			return send(scene, designer)
		case 'remind':
			must(client, await remind(designer, { proposal: scene.id(), again: false, once: stamp.id<'once'>() }, stamp))
			return
		case 'withdraw':
		case 'cancel':
		case 'install': {
			const steering = { proposal: scene.id(), step: step.does, reason: step.reason, once: stamp.id<'once'>() }
			must(client, await steer(designer, steering, stamp))
			return
		}
		case 'note lapses':
			await noteLapses(await viewerOf('system'), stamp)
			return
		default:
			return step satisfies never
	}
}
