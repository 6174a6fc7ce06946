import { and, asc, desc, eq } from 'drizzle-orm'
import type { Viewer } from '@/lib/access/viewer'
import type { Offer, OfferLine } from '@/lib/proposal/offer/offer'
import { paletteAt, palettesInWords, palettesOf } from '@/lib/proposal/picked/palettes'
import type { Day } from '@/lib/units/day'
import type { ClientId, ProposalId, SeasonId } from '@/lib/units/id'
import { type Reading, read } from '../open'
import { answer, client, place, proposal, revision, season } from '../schema'
import { denied } from '../viewer'
import { offerIn } from './documents'
import { answerTo } from './read-offer'

/** One approved design as hands need it: where, which container, what goes in. No price and no cost. */
export type Install = {
	readonly proposal: ProposalId
	readonly clientId: ClientId
	readonly season: SeasonId
	readonly client: string
	readonly window: { readonly from: Day; readonly to: Day }
	readonly palette: string
	readonly places: readonly {
		readonly name: string
		readonly address: string
		readonly access: string
		readonly pots: readonly { readonly name: string; readonly words: string; readonly lines: readonly OfferLine[] }[]
	}[]
	readonly extras: readonly { readonly name: string; readonly lines: readonly OfferLine[] }[]
}

function approved(db: Reading) {
	return db
		.select({ proposal, revision, client })
		.from(proposal)
		.innerJoin(revision, eq(revision.hash, proposal.revisionHash))
		.innerJoin(answer, and(eq(answer.revisionId, revision.id), eq(answer.kind, 'approval')))
		.innerJoin(client, eq(client.id, proposal.clientId))
		.innerJoin(season, eq(season.id, proposal.seasonId))
		.where(eq(proposal.state, 'approved'))
		.orderBy(desc(season.windowFrom), asc(client.name))
		.all()
}

function installOf(
	db: Reading,
	{ proposal: row, revision: standing, client: of }: ReturnType<typeof approved>[number],
): Install[] {
	const offer = offerIn(db, standing)
	const given = answerTo(db, standing)
	const palettes = offer && given && palettesOf(offer, given)
	if (offer === undefined || given === undefined || palettes === undefined) return []
	const notes = new Map(
		db
			.select()
			.from(place)
			.where(eq(place.clientId, of.id))
			.all()
			.map(({ id, accessNote }) => [id, accessNote]),
	)
	const linesIn = ({ id, place: at }: Offer['containers'][number]) =>
		paletteAt(palettes, at).pots.find(({ container }) => container === id)?.lines ?? []
	const staying = offer.containers.filter(({ id }) => !given.leftOut.includes(id))
	return [
		{
			proposal: row.id,
			clientId: of.id,
			season: row.seasonId,
			client: offer.client,
			window: offer.window,
			palette: palettesInWords(offer, palettes),
			places: offer.places.map(({ id, name, address }) => ({
				name,
				address,
				access: notes.get(id) ?? '',
				pots: staying
					.filter((each) => each.place === id)
					.map((each) => ({ name: each.name, words: each.words, lines: linesIn(each) })),
			})),
			extras: offer.extras.filter(({ key }) => given.extras.includes(key)).map(({ name, lines }) => ({ name, lines })),
		},
	]
}

/** Every approved design that is not in yet. */
export async function toInstall(viewer: Viewer): Promise<Install[] | undefined> {
	if (denied(viewer, 'see what to install', null) !== null) return undefined
	return read((db) => approved(db).flatMap((row) => installOf(db, row)))
}
