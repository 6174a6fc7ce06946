import { asc, isNull } from 'drizzle-orm'
import type { Viewer } from '@/lib/access/viewer'
import type { SiteColour } from '@/lib/colour/palette/palette'
import type { Recipient } from '@/lib/proposal/desk/publish-words'
import type { Draft } from '@/lib/proposal/draft'
import type { Problem } from '@/lib/proposal/problem'
import { problems } from '@/lib/proposal/ready'
import type { State } from '@/lib/proposal/state'
import type { Season } from '@/lib/season/season'
import type { Day } from '@/lib/units/day'
import type { ClientId, ProposalId, SeasonId } from '@/lib/units/id'
import { libraryIn } from '../../catalogue/read-recipes'
import { type Reading, read } from '../../open'
import { material } from '../../schema'
import type { Stamp } from '../../stamp'
import { draftOf } from '../documents'
import { factsFor, siteColoursOf } from '../facts'
import { findProposal } from '../find'
import { type GivenAnswer, standingAnswer } from '../read-offer'
import { recipientsOf } from '../recipients'

const materialsIn = (db: Reading) =>
	db
		.select({ id: material.id, name: material.name, role: material.role, unit: material.unit, kind: material.kind })
		.from(material)
		.where(isNull(material.retiredAt))
		.orderBy(asc(material.role), asc(material.name))
		.all()

/** Everything that the editor shows beside the draft: no cost among it. */
export type Desk = {
	readonly client: { readonly id: ClientId; readonly name: string }
	readonly season: Season & { readonly id: SeasonId }
	readonly state: State
	readonly today: Day
	readonly timeZone: string
	readonly version: number
	readonly draft: Draft
	/** What stops it from being published as it was kept. */
	readonly problems: readonly Problem[]
	readonly number: number
	readonly answer: GivenAnswer | undefined
	/** What the address of its cover ends in; null before it is published. */
	readonly coverKey: string | null
	/** What was approved, in words; else the only palette. */
	readonly palette: string
	/** Who hears of a new revision. */
	readonly recipients: readonly Recipient[]
	readonly places: readonly { readonly id: string; readonly name: string }[]
	readonly containers: readonly { readonly id: string; readonly place: string; readonly name: string }[]
	readonly colours: readonly SiteColour[]
	readonly recipes: readonly { readonly id: string; readonly name: string }[]
	readonly materials: ReturnType<typeof materialsIn>
}

export async function readDesk(viewer: Viewer, id: ProposalId, stamp: Pick<Stamp, 'at'>): Promise<Desk | undefined> {
	return read((db) => {
		const found = findProposal(db, viewer, 'see the draft', id, stamp)
		if (!found.ok || viewer.is !== 'staff') return undefined
		const { client, season, state, today, studio, row } = found
		const facts = factsFor(db, found, viewer.person)
		const { sites, cards } = facts
		const kept = draftOf(db, id)
		return {
			client: { id: client.id, name: client.name },
			season: { id: season.id, quarter: season.quarter, year: season.year },
			state,
			today,
			timeZone: studio.timeZone,
			...kept,
			problems: problems(kept.draft, facts, today),
			number: row.revisionNumber,
			answer: standingAnswer(db, found),
			coverKey: row.cardKey,
			palette: row.palette,
			recipients: recipientsOf(db, client.id),
			places: sites.map(({ id: place, name }) => ({ id: place, name })),
			containers: cards.map(({ id: card, place, name }) => ({ id: card, place, name })),
			colours: siteColoursOf(db, { sites }),
			recipes: libraryIn(db)
				.filter(({ quarter }) => quarter === season.quarter)
				.map(({ id: of, name }) => ({ id: of, name })),
			materials: materialsIn(db),
		}
	})
}
