import { and, desc, eq, isNotNull } from 'drizzle-orm'
import type { Viewer } from '@/lib/access/viewer'
import { type State, stateOf } from '@/lib/proposal/state'
import { leastTotal } from '@/lib/season/standing'
import type { Cents } from '@/lib/units/cents'
import { type Day, dayOf } from '@/lib/units/day'
import type { ClientId, ProposalId } from '@/lib/units/id'
import { type Reading, read } from '../open'
import { offerIn, revisionOf } from '../proposals/documents'
import { answerTo } from '../proposals/read-offer'
import { client, place, proposal, season, studio } from '../schema'
import type { Stamp } from '../stamp'
import { denied, visibleTo } from '../viewer'

export type Door = { readonly client: ClientId; readonly name: string }

/** The clients whose doors are open to the viewer, by name. */
export async function doors(viewer: Viewer): Promise<Door[]> {
	if (viewer.is !== 'contact') return []
	return read((db) =>
		db
			.select({ client: client.id, name: client.name })
			.from(client)
			.where(visibleTo(viewer, client.id))
			.orderBy(client.name)
			.all(),
	)
}

export type HomeLine = {
	readonly proposal: ProposalId
	readonly season: { readonly quarter: 'spring' | 'summer' | 'autumn' | 'winter'; readonly year: number }
	readonly state: State['is']
	readonly answerBy: Day | null
	readonly window: { readonly from: Day; readonly to: Day }
	readonly palette: string
	readonly paletteHexes: string
	/** With tax: of what was approved, else of the palette of least price; null once the client's words are erased. */
	readonly totalCents: Cents | null
}

export type Home = {
	readonly name: string
	readonly wall: string | null
	readonly today: Day
	readonly currency: string
	readonly lines: readonly HomeLine[]
}

/** Days and total as they were offered; the season's own days once the client's words are erased. */
function offered(
	db: Reading,
	{ id, revisionNumber }: typeof proposal.$inferSelect,
	{ windowFrom: from, windowTo: to }: typeof season.$inferSelect,
): Pick<HomeLine, 'window' | 'totalCents'> {
	const standing = revisionOf(db, id, revisionNumber)
	const offer = standing && offerIn(db, standing)
	if (standing === undefined || offer === undefined) return { window: { from, to }, totalCents: null }
	return { window: offer.window, totalCents: answerTo(db, standing)?.totalCents ?? leastTotal(offer) }
}

/** What stands behind one client's door: every season that was ever published to them, the newest first. */
export async function readHome(viewer: Viewer, of: ClientId, { at }: Pick<Stamp, 'at'>): Promise<Home | undefined> {
	if (viewer.is !== 'contact' || denied(viewer, 'see the client', of) !== null) return undefined
	return read((db) => {
		const [found] = db
			.select({ client, studio })
			.from(client)
			.innerJoin(studio, eq(studio.id, 1))
			.where(and(eq(client.id, of), visibleTo(viewer, client.id)))
			.all()
		if (found === undefined) return undefined
		const today = dayOf(at, found.studio.timeZone)
		const [first] = db
			.select({ wall: place.wallHex })
			.from(place)
			.where(eq(place.clientId, of))
			.orderBy(place.position)
			.limit(1)
			.all()
		const rows = db
			.select({ row: proposal, season })
			.from(proposal)
			.innerJoin(season, eq(season.id, proposal.seasonId))
			.where(and(eq(proposal.clientId, of), visibleTo(viewer, proposal.clientId), isNotNull(proposal.revisionHash)))
			.orderBy(desc(season.windowFrom))
			.all()
		const lines = rows.map(({ row, season: when }) => ({
			proposal: row.id,
			season: { quarter: when.quarter, year: when.year },
			state: stateOf(row.state, row.revisionHash, row.answerBy, today).is,
			answerBy: row.answerBy,
			palette: row.palette,
			paletteHexes: row.paletteHexes,
			...offered(db, row, when),
		}))
		return { name: found.client.name, wall: first?.wall ?? null, today, currency: found.studio.currency, lines }
	})
}
