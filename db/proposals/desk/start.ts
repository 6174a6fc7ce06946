import { eq } from 'drizzle-orm'
import type { Viewer } from '@/lib/access/viewer'
import type { Problem } from '@/lib/proposal/problem'
import type { Fresh, Ground } from '@/lib/proposal/start/fresh'
import { fromAnother } from '@/lib/proposal/start/from-another'
import { fromEarlier } from '@/lib/proposal/start/from-earlier'
import { fromRecipe } from '@/lib/proposal/start/from-recipe'
import type { Vessels } from '@/lib/proposal/start/old-pots'
import { applied } from '@/lib/season/collection/applied'
import { problems } from '@/lib/season/collection/problems'
import type { ClientId, Id, ProposalId, SeasonId } from '@/lib/units/id'
import { libraryIn } from '../../catalogue/read-recipes'
import { type Reading, type Tx, write } from '../../open'
import { container, place } from '../../schema'
import type { Stamp } from '../../stamp'
import { collectionOf } from '../../studio/collection/kept'
import { type Denied, denied, hidden } from '../../viewer'
import { draftOf, offerIn, revisionOf } from '../documents'
import { type Found, findProposal } from '../find'
import { standingAnswer } from '../read-offer'
import { fillDraft, type NotFilled } from './fill'

/** What a draft is started from. */
export type From =
	| { readonly is: 'collection'; readonly options: 1 | 2 | 3 }
	| { readonly is: 'earlier' | 'another'; readonly proposal: ProposalId }
	| { readonly is: 'recipe'; readonly recipe: Id<'recipe'> }

export type Started =
	| { readonly ok: true; readonly proposal: ProposalId; readonly told: readonly string[] }
	| { readonly ok: false; readonly why: NotFilled; readonly proposal: ProposalId | null }
	| { readonly ok: false; readonly why: 'not ready'; readonly problems: readonly Problem[] }
	| Denied

type Starting = { readonly client: ClientId; readonly season: SeasonId; readonly from: From }
type Making = (ground: Ground) => Fresh

/** The containers as they were drawn in what was published; none where nothing was, or where it has no drawing. */
function frozenVessels(db: Reading, { row }: Found): Vessels {
	const standing = revisionOf(db, row.id, row.revisionNumber)
	const offer = standing && offerIn(db, standing)
	return new Map(offer?.containers.flatMap(({ id, vessel }) => (vessel === undefined ? [] : [[id, vessel]])) ?? [])
}

/** The containers of a client as they are now, those that are gone among them. */
function vesselsOf(db: Reading, of: ClientId): Vessels {
	const rows = db
		.select({ card: container })
		.from(container)
		.innerJoin(place, eq(place.id, container.placeId))
		.where(eq(place.clientId, of))
		.all()
	return new Map(rows.map(({ card }) => [card.id, card]))
}

function ofProposal(tx: Tx, viewer: Viewer, { client, season, from }: Starting, stamp: Stamp): Making | undefined {
	if (from.is !== 'earlier' && from.is !== 'another') return undefined
	const found = findProposal(tx, viewer, 'see the draft', from.proposal, stamp)
	if (!found.ok || found.client.archivedAt !== null) return undefined
	const isOwn = found.row.clientId === client
	if (isOwn !== (from.is === 'earlier') || (isOwn && found.row.seasonId === season)) return undefined
	const { draft } = draftOf(tx, from.proposal)
	if (!isOwn) return (ground) => fromAnother({ draft, vessels: vesselsOf(tx, found.row.clientId) }, ground)
	const then = {
		draft,
		season: found.season,
		approved: standingAnswer(tx, found)?.option ?? null,
		vessels: frozenVessels(tx, found),
	}
	return (ground) => fromEarlier(then, ground)
}

type Way = { readonly ok: true; readonly make: Making } | Extract<Started, { readonly why: 'not ready' }> | Denied

function wayOf(tx: Tx, viewer: Viewer, starting: Starting, stamp: Stamp): Way {
	const { season, from } = starting
	if (from.is === 'collection') {
		const [{ collection }, recipes] = [collectionOf(tx, season), libraryIn(tx)]
		const found = problems(collection, recipes)
		if (found.length > 0) return { ok: false, why: 'not ready', problems: found }
		return { ok: true, make: (ground) => applied(collection, ground, { recipes }, from.options) }
	}
	if (from.is === 'recipe') {
		const recipe = libraryIn(tx).find(({ id }) => id === from.recipe)
		return recipe === undefined ? hidden : { ok: true, make: (ground) => fromRecipe(recipe, ground) }
	}
	const make = ofProposal(tx, viewer, starting, stamp)
	return make === undefined ? hidden : { ok: true, make }
}

/** Starts a client's draft from something that is there; all of it is worked out anew for this client. */
export async function startDraft(viewer: Viewer, starting: Starting, stamp: Stamp): Promise<Started> {
	const no = denied(viewer, 'change the draft', starting.client)
	if (no !== null) return no
	return write((tx): Started => {
		const way = wayOf(tx, viewer, starting, stamp)
		if (!way.ok) return way
		const filled = fillDraft(tx, viewer, starting, { called: starting.from.is, make: way.make }, stamp)
		return filled.ok ? { ok: true, proposal: filled.proposal, told: filled.fresh.told } : filled
	})
}
