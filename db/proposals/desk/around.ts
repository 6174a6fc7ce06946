import { and, asc, eq, inArray, isNull, notInArray, or, type SQL, sql } from 'drizzle-orm'
import type { Around, Neighbour, OtherPalette } from '@/lib/proposal/design/around/around'
import { streetOf, streetWord } from '@/lib/proposal/design/around/street'
import { type Draft, draftSchema } from '@/lib/proposal/draft'
import type { Facts } from '@/lib/proposal/facts'
import { staysOut } from '@/lib/proposal/state'
import { isHex } from '@/lib/units/hex'
import type { ProposalId, SeasonId } from '@/lib/units/id'
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

const plainAddress = sql`replace(replace(replace(lower(${place.address}), '.', ''), '’', ''), '''', '')`

/** Places that may be in the streets of some addresses; all of them where an address has no word to know its street by. */
function mayBeNear(addresses: readonly string[]): SQL | undefined {
	const words = addresses.filter((each) => streetOf(each) !== null).map(streetWord)
	if (words.includes(null)) return undefined
	return words.length === 0 ? sql`0` : or(...words.map((word) => sql`instr(${plainAddress}, ${word}) > 0`))
}

/** Places of clients with a proposal of the season that is still alive, and the street of each. */
function doorsWhere(db: Reading, season: SeasonId, near: SQL | undefined) {
	const rows = db
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
		.where(and(eq(proposal.seasonId, season), notInArray(proposal.state, [...staysOut]), near))
		.orderBy(asc(client.name), asc(client.id), asc(place.position), asc(place.id))
		.all()
	return rows.map(({ address, ...row }) => ({ ...row, street: streetOf(address) }))
}

export type Doors = ReturnType<typeof doorsWhere>

/** All doors of a season, read once where many of its drafts are gone through. */
export const doorsIn = (db: Reading, season: SeasonId): Doors => doorsWhere(db, season, undefined)

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

/** Other clients' doors in the streets of a draft's places, for each place apart. */
function doorsNear(db: Reading, { client: of, row: { seasonId } }: Found, sites: Facts['sites'], all?: Doors) {
	const doors = all ?? doorsWhere(db, seasonId, mayBeNear(sites.map(({ address }) => address)))
	const streets = sites.map(({ id, address }) => ({ id, street: streetOf(address) }))
	return doors
		.filter((door) => door.client !== of.id && door.street !== null)
		.flatMap((door) => streets.filter(({ street }) => street === door.street).map(({ id }) => ({ ...door, place: id })))
}

/**
 * What this draft is held against: last year's choice, and the palettes of other clients in the same streets. Of the
 * season's doors only those are read that may be near, unless all were read before.
 */
export function aroundIn(db: Reading, found: Found, { sites }: Pick<Facts, 'sites'>, all?: Doors): Around {
	const near = doorsNear(db, found, sites, all)
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
