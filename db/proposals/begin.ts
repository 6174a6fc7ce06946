import { and, eq, isNull } from 'drizzle-orm'
import type { Viewer } from '@/lib/access/viewer'
import { emptyDraft } from '@/lib/proposal/draft'
import type { ClientId, ProposalId, SeasonId } from '@/lib/units/id'
import { agreedFor } from '../agreements/agreed-season'
import { type Tx, write } from '../open'
import { append } from '../record/append'
import { client, draft, proposal, season } from '../schema'
import type { Stamp } from '../stamp'
import { type Denied, denied, hidden } from '../viewer'

export type Begun = { readonly ok: true; readonly id: ProposalId } | Denied
type Whose = { readonly client: ClientId; readonly season: SeasonId }

/** A draft for a client and a season, inside what else is done; the one that is there already when there is one. */
export function beginIn(tx: Tx, viewer: Viewer, of: Whose, stamp: Stamp): Begun {
	const no = denied(viewer, 'change the draft', of.client)
	if (no !== null || viewer.is !== 'staff') return no ?? hidden
	const [who] = tx
		.select()
		.from(client)
		.where(and(eq(client.id, of.client), isNull(client.archivedAt)))
		.all()
	const [when] = tx.select().from(season).where(eq(season.id, of.season)).all()
	if (who === undefined || when === undefined) return hidden
	const same = and(eq(proposal.clientId, of.client), eq(proposal.seasonId, of.season))
	const [there] = tx.select({ id: proposal.id }).from(proposal).where(same).all()
	if (there !== undefined) return { ok: true, id: there.id }
	const id = stamp.id<'proposal'>()
	const blank = { state: 'drafting', revisionNumber: 0, palette: '', paletteCount: 0, paletteHexes: '' } as const
	tx.insert(proposal)
		.values({ id, clientId: of.client, seasonId: of.season, ...blank, createdAt: stamp.at })
		.run()
	const begun = emptyDraft({ from: when.windowFrom, to: when.windowTo, answerBy: when.answerBy })
	const document = JSON.stringify({ ...begun, agreement: agreedFor(tx, of.client, when) })
	tx.insert(draft).values({ proposalId: id, version: 1, document, updatedAt: stamp.at, updatedBy: viewer.person }).run()
	append(tx, stamp, viewer, {
		act: 'proposal begun',
		object: `proposal ${id}`,
		client: of.client,
		facts: { season: of.season },
	})
	return { ok: true, id }
}

/** A draft for a client and a season; the one that is there already when there is one. */
export async function beginProposal(viewer: Viewer, of: Whose, stamp: Stamp): Promise<Begun> {
	return write((tx) => beginIn(tx, viewer, of, stamp))
}
