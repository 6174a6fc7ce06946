import { asc, eq, isNotNull } from 'drizzle-orm'
import type { Viewer } from '@/lib/access/viewer'
import { type Break, firstBreak } from '@/lib/record/chain'
import { type Hash, hashOf, sealedHash } from '@/lib/record/hash'
import type { ClientId } from '@/lib/units/id'
import { type Reading, read } from '../open'
import { erasure, event, proposal, revision, sealedText } from '../schema'
import { denied } from '../viewer'
import { keptLines } from './kept-lines'
import { untold } from './told'

export type Verified = {
	readonly lines: number
	/** Hash of the last line: kept elsewhere, it shows a tail that was cut off. */
	readonly head: Hash | null
	readonly broken: Break | { readonly seq: number | null; readonly why: string } | null
	/** Lines and revisions whose words a client's erasure took. */
	readonly erased: number
}

/** Words that no longer give the hash under which they were put away. */
function alteredWords(db: Reading): string | null {
	for (const { hash, salt, body } of db.select().from(sealedText).all())
		if (sealedHash(salt, body) !== hash) return `The words under ${hash} were altered.`
	return null
}

function alteredRevision(db: Reading): string | null {
	for (const row of db.select().from(revision).all()) {
		const { proposalId, number, offerHash, costingHash, ratesVersion, answerBy, hash } = row
		const again = hashOf({
			v: 1,
			proposal: proposalId,
			number,
			offer: offerHash,
			costing: costingHash,
			rates: ratesVersion,
			answerBy,
		})
		if (again !== hash) return `Revision ${number} of ${proposalId} does not give its hash.`
	}
	return null
}

type Fate = (hash: Hash, client: ClientId | null) => 'there' | 'erased' | 'missing'

/** What became of words: those of a client who was erased may be gone. */
function fateOfWords(db: Reading): Fate {
	const kept = db.select({ hash: sealedText.hash }).from(sealedText).all()
	const erasures = db.select({ client: erasure.clientId }).from(erasure).all()
	const there = new Set(kept.map(({ hash }) => hash))
	const gone = new Set(erasures.map(({ client }) => client))
	return (hash, client) => {
		if (there.has(hash)) return 'there'
		return client !== null && gone.has(client) ? 'erased' : 'missing'
	}
}

type Named = { readonly what: string; readonly client: ClientId | null; readonly words: readonly Hash[] }

/** Each line and each revision with the words that it names. */
function naming(db: Reading): Named[] {
	const told = db.select().from(event).where(isNotNull(event.sealed)).orderBy(asc(event.seq)).all()
	const out = db
		.select({ row: revision, client: proposal.clientId })
		.from(revision)
		.innerJoin(proposal, eq(proposal.id, revision.proposalId))
		.all()
	return [
		...told.map(({ seq, clientId, sealed }) => ({
			what: `line ${seq}`,
			client: clientId,
			words: sealed === null ? [] : [sealed],
		})),
		...out.map(({ row, client }) => ({
			what: `revision ${row.number} of ${row.proposalId}`,
			client,
			words: [row.offerHash, row.costingHash],
		})),
	]
}

/** Words that are gone without an erasure; and how many lines and revisions have lost theirs by one. */
function missingWords(db: Reading): { missing: string | null; erased: number } {
	const fate = fateOfWords(db)
	let erased = 0
	for (const { what, client, words } of naming(db)) {
		const fates = words.map((hash) => fate(hash, client))
		if (fates.includes('missing')) return { missing: `The words of ${what} are gone without an erasure.`, erased }
		if (fates.includes('erased')) erased += 1
	}
	return { missing: null, erased }
}

function verified(db: Reading): Verified {
	const all = keptLines(db)
	const { missing, erased } = missingWords(db)
	const why = alteredWords(db) ?? alteredRevision(db)
	const altered = why === null ? untold(db, all) : { seq: null, why }
	const gone = missing === null ? null : { seq: null, why: missing }
	const broken = firstBreak(all) ?? altered ?? gone
	return { lines: all.length, head: all.at(-1)?.hash ?? null, broken, erased }
}

/** Goes through the whole record, as it stands at one moment, and names the first line that does not hold. */
export async function verify(viewer: Viewer): Promise<Verified | undefined> {
	if (denied(viewer, 'see the record', null) !== null) return undefined
	return read((db) => db.transaction(verified))
}
