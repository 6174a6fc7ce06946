import { and, eq, inArray, isNull, ne, notInArray } from 'drizzle-orm'
import type { Around, Neighbour, OtherPalette } from '@/lib/proposal/design/around/around'
import { isSameStreet } from '@/lib/proposal/design/around/same-street'
import { type Draft, draftSchema } from '@/lib/proposal/draft'
import type { Facts } from '@/lib/proposal/facts'
import { isHex } from '@/lib/units/hex'
import type { ProposalId } from '@/lib/units/id'
import type { Reading } from '../../open'
import { client, draft, place, proposal, season } from '../../schema'
import type { Found } from '../find'

type Ledger = Pick<typeof proposal.$inferSelect, 'palette' | 'paletteHexes'>

/** What was chosen, as the ledger keeps it. */
const chosenIn = ({ palette: name, paletteHexes }: Ledger): OtherPalette => ({
	name,
	hexes: paletteHexes.split(' ').filter(isHex),
})

function lastYearOf(db: Reading, { client: of, season: now }: Found): OtherPalette | null {
	const before = and(eq(season.quarter, now.quarter), eq(season.year, now.year - 1))
	const [row] = db
		.select({ palette: proposal.palette, paletteHexes: proposal.paletteHexes })
		.from(proposal)
		.innerJoin(season, eq(season.id, proposal.seasonId))
		.where(and(eq(proposal.clientId, of.id), before, inArray(proposal.state, ['approved', 'installed'])))
		.all()
	return row === undefined ? null : chosenIn(row)
}

/** Other clients with a proposal of the season that is still alive, place by place. */
function others(db: Reading, { client: of, row: { seasonId } }: Found) {
	return db
		.select({
			client: client.id,
			name: client.name,
			address: place.address,
			proposal: proposal.id,
			state: proposal.state,
			palette: proposal.palette,
			paletteHexes: proposal.paletteHexes,
		})
		.from(proposal)
		.innerJoin(client, and(eq(client.id, proposal.clientId), isNull(client.archivedAt)))
		.innerJoin(place, eq(place.clientId, client.id))
		.where(
			and(
				eq(proposal.seasonId, seasonId),
				ne(client.id, of.id),
				notInArray(proposal.state, ['skipped', 'withdrawn', 'cancelled']),
			),
		)
		.all()
}

function draftsOf(db: Reading, ids: readonly ProposalId[]): ReadonlyMap<ProposalId, Draft> {
	const rows = db
		.select()
		.from(draft)
		.where(inArray(draft.proposalId, [...ids]))
		.all()
	return new Map(rows.map(({ proposalId, document }) => [proposalId, draftSchema.parse(JSON.parse(document))]))
}

const draftedIn = (of: Draft | undefined): OtherPalette[] =>
	of?.options.map(({ name, palette }) => ({ name, hexes: palette.map(({ hex }) => hex) })) ?? []

/** What this draft is held against: last year's choice, and the palettes of other clients in the same streets. */
export function aroundIn(db: Reading, found: Found, { sites }: Pick<Facts, 'sites'>): Around {
	const near = others(db, found).flatMap((other) =>
		sites.filter(({ address }) => isSameStreet(address, other.address)).map(({ id }) => ({ ...other, place: id })),
	)
	const open = near.filter(({ state }) => state !== 'approved' && state !== 'installed')
	const drafts = draftsOf(
		db,
		open.map((each) => each.proposal),
	)
	const neighbours = near.map((each): Neighbour => {
		const isChosen = each.state === 'approved' || each.state === 'installed'
		const palettes = isChosen ? [chosenIn(each)] : draftedIn(drafts.get(each.proposal))
		return { client: each.client, name: each.name, place: each.place, palettes }
	})
	return { lastYear: lastYearOf(db, found), neighbours }
}
