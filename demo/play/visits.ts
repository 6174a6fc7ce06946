import { startVisit } from '@/db/clients/visits/keep-visit'
import { reportWrong } from '@/db/clients/visits/report-wrong'
import type { Stamp } from '@/db/stamp'
import { viewerOf } from '@/db/viewer'
import { addDays } from '@/lib/units/day'
import { type CastReport, type CastVisit, type RoundKey, reports, visits } from '../cast/visits'
import { entriesOf } from './keys'
import { must } from './must'
import { photosOf } from './photos'
import type { Stage } from './stage'
import { type Act, momentOn } from './timeline'

const proposalOf = (stage: Stage, visit: CastVisit) =>
	visit.season === 'winter' ? stage.winter.of(visit.client) : stage.autumn.of(visit.client)

async function written(stage: Stage, key: RoundKey, visit: CastVisit, stamp: Stamp): Promise<void> {
	const designer = await stage.designer()
	const { does, day, kind, place, came, clientNote, studioNote } = visit
	const where = { client: stage.clients.of(visit.client), season: stage.seasons.of(visit.season) }
	const keeping = {
		command: { do: does, day: addDays(stage.today, day) },
		written: {
			...{ kind, place: stage.places.of(place), came, clientNote, out: [], tell: true },
			studioNote: stage.tell('visit-note', key, studioNote),
		},
		photos: await photosOf(designer, proposalOf(stage, visit), visit.photos, stamp),
	}
	stage.visits.put(key, must(key, await startVisit(designer, where, keeping, stamp)).visit)
}

async function said(stage: Stage, key: RoundKey, { client, place, by, words, photos }: CastReport, stamp: Stamp) {
	const contact = await viewerOf(stage.people.of(by))
	const report = {
		words,
		place: stage.places.of(place),
		photos: await photosOf(contact, stage.winter.of(client), photos, stamp),
	}
	stage.visits.put(key, must(key, await reportWrong(contact, stage.clients.of(client), report, stamp)).visit)
}

/** What was done at the doors, and what clients said is wrong. */
export const rounds = (stage: Stage): Act[] => [
	...entriesOf(visits).map(([key, visit]) => ({
		at: momentOn(stage.today, visit.on, visit.at),
		run: (stamp: Stamp) => written(stage, key, visit, stamp),
	})),
	...entriesOf(reports).map(([key, report]) => ({
		at: momentOn(stage.today, report.on, report.at),
		run: (stamp: Stamp) => said(stage, key, report, stamp),
	})),
]
