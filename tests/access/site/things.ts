import { z } from 'zod'
import type { Seeded } from '@/demo/seed'
import { consentFor, consentHash } from '@/lib/agreement/signing/consent'
import { defaultConsent } from '@/lib/agreement/signing/default-consent'
import { draftText } from '@/lib/forms/draft-form'
import { draftSchema } from '@/lib/proposal/draft'
import type { ClientKey } from './people'
import { record } from './snapshot'

/** What belongs to one client, by id, as the record has it. */
export type Things = {
	readonly client: string
	readonly place: string
	readonly container: string
	readonly contact: string
	readonly proposal: string
	/** Of the season before; null when there was none. */
	readonly answered: string | null
	readonly season: string
	readonly material: string
	readonly recipe: string
	readonly supplier: string
	/** Version of the winter's collection. */
	readonly collection: number
	/** Who came last of those who help. */
	readonly helper: string
	/** Of the place, the one that came last. */
	readonly colour: string
	/** Of the place, the one that came first. */
	readonly otherColour: string
	/** Hash of the revision that stands. */
	readonly revision: string
	readonly version: number
	/** Null where they have none. */
	readonly visit: string | null
	readonly photo: string | null
	readonly agreement: string | null
	/** Version of its terms. */
	readonly terms: string
	/** The hash of its document that was issued last, and of the words on records that its client is shown. */
	readonly document: string
	readonly words: string
	/** The number of the first that was sent to them, and their last payment. */
	readonly invoice: string | null
	readonly entry: string | null
}

type Db = Parameters<Parameters<typeof record>[1]>[0]

function one(db: Db, sql: string, ...values: readonly string[]): string {
	const found: unknown = db
		.prepare(sql)
		.pluck()
		.get(...values)
	if (found === undefined || found === null) throw new Error(`Nothing was found: ${sql} (${values.join(', ')})`)
	return String(found)
}

function perhaps(db: Db, sql: string, value: string): string | null {
	const found: unknown = db.prepare(sql).pluck().get(value)
	return found === undefined ? null : z.string().parse(found)
}

const writeTo = 'post@studio.example'
const agreed = z.object({ studio: z.object({ name: z.string() }), client: z.object({ name: z.string() }) })

/** The client's newest agreement that was issued, where they have one. */
function agreementOf(db: Db, client: string): Pick<Things, 'agreement' | 'document' | 'words' | 'terms'> {
	const agreement = perhaps(db, 'SELECT id FROM agreement WHERE client_id = ? ORDER BY issued IS NULL, id DESC', client)
	if (agreement === null) return { agreement, document: 'f'.repeat(64), words: 'f'.repeat(64), terms: '1' }
	const document = one(db, 'SELECT issued FROM agreement WHERE id = ?', agreement)
	const { studio, client: whose } = agreed.parse(
		JSON.parse(one(db, 'SELECT body FROM sealed_text WHERE hash = ?', document)),
	)
	const shown = consentFor(defaultConsent, { studio: studio.name, client: whose.name, writeTo })
	const terms = one(db, 'SELECT version FROM agreement_draft WHERE agreement_id = ?', agreement)
	return { agreement, document, words: consentHash(shown), terms }
}

export function thingsOf(folder: string, cast: Seeded, key: ClientKey): Things {
	const client = cast.clients[key].id
	const { winter, autumn } = cast.seasons
	return record(folder, (db) => {
		const proposal = one(db, 'SELECT id FROM proposal WHERE client_id = ? AND season_id = ?', client, winter)
		const answered = db
			.prepare('SELECT id FROM proposal WHERE client_id = ? AND season_id = ?')
			.pluck()
			.get(client, autumn)
		const place = one(db, 'SELECT id FROM place WHERE client_id = ? ORDER BY position', client)
		return {
			client,
			place,
			container: one(db, 'SELECT id FROM container WHERE place_id = ? ORDER BY position', place),
			contact: one(db, 'SELECT id FROM contact WHERE client_id = ? ORDER BY id DESC', client),
			proposal,
			answered: answered === undefined ? null : z.string().parse(answered),
			season: winter,
			material: one(db, 'SELECT id FROM material ORDER BY id'),
			recipe: one(db, 'SELECT id FROM recipe ORDER BY id'),
			supplier: one(db, 'SELECT id FROM supplier ORDER BY id'),
			collection: Number(one(db, 'SELECT version FROM collection WHERE season_id = ?', winter)),
			colour: one(db, 'SELECT id FROM site_colour WHERE place_id = ? ORDER BY position DESC', place),
			otherColour: one(db, 'SELECT id FROM site_colour WHERE place_id = ? ORDER BY position', place),
			helper: one(db, "SELECT person_id FROM staff WHERE role = 'helper' ORDER BY ended_at IS NULL DESC, since DESC"),
			revision: one(db, 'SELECT revision_hash FROM proposal WHERE id = ?', proposal),
			visit: perhaps(db, 'SELECT id FROM visit WHERE client_id = ? ORDER BY id', client),
			photo: perhaps(db, 'SELECT id FROM photo WHERE client_id = ? ORDER BY id', client),
			...agreementOf(db, client),
			invoice: perhaps(db, 'SELECT number FROM invoice WHERE client_id = ? ORDER BY rowid', client),
			entry: perhaps(db, "SELECT id FROM entry WHERE client_id = ? AND is_a = 'payment' ORDER BY seq DESC", client),
			version: Number(one(db, 'SELECT version FROM draft WHERE proposal_id = ?', proposal)),
		}
	})
}

/** The same form about a thing that is not there, or that is no id at all. */
export const allNamed = (things: Things, id: string): Things => ({
	...things,
	...{
		client: id,
		place: id,
		container: id,
		contact: id,
		proposal: id,
		season: id,
		material: id,
		recipe: id,
		supplier: id,
		helper: id,
		colour: id,
		otherColour: id,
		visit: id,
		photo: id,
		agreement: id,
		invoice: id,
		entry: id,
	},
})

/** The draft of a proposal as the editor sends it. */
export function draftOf(folder: string, proposal: string) {
	const row = record(folder, (db) =>
		db.prepare('SELECT document FROM draft WHERE proposal_id = ?').pluck().get(proposal),
	)
	return draftText(draftSchema.parse(JSON.parse(z.string().parse(row))))
}
