import type { ProposalId } from '@/lib/units/id'
import type { ClientKey } from '../../cast/clients'
import { autumnProposals, winterProposals } from '../../cast/proposals/proposals'
import type { CastProposal } from '../../cast/proposals/shape'
import { entriesOf, type Shelf } from '../keys'
import type { Scene, Stage } from '../stage'
import { type Act, momentOn } from '../timeline'
import { ours } from './ours'
import { theirs } from './theirs'

type Table<K extends ClientKey> = Readonly<Record<K, CastProposal>>

function storiesOf<K extends ClientKey>(
	stage: Stage,
	quarter: Scene['quarter'],
	table: Table<K>,
	made: Shelf<K, ProposalId>,
) {
	return entriesOf(table).flatMap(([client, of]) =>
		of.story.map((step): Act => {
			const fixed = { stage, quarter, client, of, begun: (id: ProposalId) => made.put(client, id) }
			return {
				at: momentOn(stage.today, step.on, step.at),
				run: async (stamp) => {
					const scene = { ...fixed, id: () => made.of(client), stamp }
					await ('by' in step ? theirs(scene, step) : ours(scene, step))
				},
			}
		}),
	)
}

/** Every proposal's story, step by step. */
export const stories = (stage: Stage): Act[] => [
	...storiesOf(stage, 'autumn', autumnProposals, stage.autumn),
	...storiesOf(stage, 'winter', winterProposals, stage.winter),
]
