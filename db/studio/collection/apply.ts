import { eq } from 'drizzle-orm'
import type { Viewer } from '@/lib/access/viewer'
import type { Problem } from '@/lib/proposal/problem'
import type { Fit } from '@/lib/proposal/start/fit'
import { type Applied, applied } from '@/lib/season/collection/applied'
import { problems } from '@/lib/season/collection/problems'
import type { ClientId, ProposalId, SeasonId } from '@/lib/units/id'
import { libraryIn } from '../../catalogue/read-recipes'
import { write } from '../../open'
import { type Filled, fillDraft, type NotFilled } from '../../proposals/desk/fill'
import { sharedIn } from '../../proposals/facts'
import { append } from '../../record/append'
import { season } from '../../schema'
import type { Stamp } from '../../stamp'
import { type Denied, denied, hidden } from '../../viewer'
import { collectionOf } from './kept'

/** How many of the designs each client is offered. */
export type Count = 1 | 2 | 3
type Applying = { readonly season: SeasonId; readonly clients: readonly ClientId[]; readonly options: Count }

export type Outcome = {
	readonly client: ClientId
	readonly is: 'drafted' | NotFilled | 'not there'
	readonly proposal: ProposalId | null
	readonly fits: readonly Fit[]
	/** What had to be done otherwise than the collection says. */
	readonly told: readonly string[]
}

export type AppliedAll =
	| { readonly ok: true; readonly clients: readonly Outcome[] }
	| { readonly ok: false; readonly why: 'not ready'; readonly problems: readonly Problem[] }
	| Denied

function outcomeOf(client: ClientId, filled: Filled<Applied>): Outcome {
	const nothing = { client, proposal: null, fits: [], told: [] }
	if (filled.ok) {
		const { proposal, fresh } = filled
		return { client, is: 'drafted', proposal, fits: fresh.fits, told: fresh.told }
	}
	if ('proposal' in filled) return { ...nothing, is: filled.why, proposal: filled.proposal }
	return { ...nothing, is: 'not there' }
}

/**
 * Drafts from the season's house designs for many clients, each in a transaction of its own: what was done for one
 * stands, whatever becomes of the next. What the designs are chosen by and grown from is read once.
 */
export async function applyCollection(
	viewer: Viewer,
	{ season: of, clients, options }: Applying,
	stamp: Stamp,
): Promise<AppliedAll> {
	const no = denied(viewer, 'change the draft', null)
	if (no !== null || viewer.is !== 'staff') return no ?? hidden
	const ready = write((tx) => {
		if (tx.select().from(season).where(eq(season.id, of)).all().length === 0) return hidden
		const [kept, recipes] = [collectionOf(tx, of), libraryIn(tx)]
		const found = problems(kept.collection, recipes)
		if (found.length > 0) return { ok: false, why: 'not ready', problems: found } as const
		append(tx, stamp, viewer, {
			act: 'collection applied',
			object: `season ${of}`,
			client: null,
			facts: { version: kept.version, options, clients: clients.length },
		})
		return { ok: true, ...kept, recipes, shared: sharedIn(tx, of, viewer.person) } as const
	})
	if (!ready.ok) return ready
	const { collection, version, recipes, shared } = ready
	const { once: _, ...unkeyed } = stamp
	const from = { called: `collection ${version}`, shared }
	const all = [...new Set(clients)].map((client) =>
		outcomeOf(
			client,
			write((tx) => {
				const make = (ground: Parameters<typeof applied>[1]) => applied(collection, ground, { recipes }, options)
				return fillDraft(tx, viewer, { client, season: of }, { ...from, make }, unkeyed)
			}),
		),
	)
	return { ok: true, clients: all }
}
