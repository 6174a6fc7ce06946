import { asc } from 'drizzle-orm'
import type { Viewer } from '@/lib/access/viewer'
import { type Break, type Entry, firstBreak, type Kept } from '@/lib/record/chain'
import { type Hash, hashOf, sealedHash } from '@/lib/record/hash'
import { type Reading, read } from '../open'
import { erasure, event, revision, sealedText } from '../schema'
import { denied } from '../viewer'

export type Verified = {
	readonly lines: number
	/** Hash of the last line: kept elsewhere, it shows a tail that was cut off. */
	readonly head: Hash | null
	readonly broken: Break | { readonly seq: number | null; readonly why: string } | null
	readonly erased: number
}

function lines(db: Reading): Kept[] {
	return db
		.select()
		.from(event)
		.orderBy(asc(event.seq))
		.all()
		.map(({ hash, clientId, facts, ...row }) => {
			const entry: Entry = { ...row, client: clientId, facts: JSON.parse(facts) }
			return { entry, hash }
		})
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

/** Hashes that evidence names and that are gone, of clients who were not erased. */
function missingWords(db: Reading): { missing: string | null; erased: number } {
	const there = new Set(
		db
			.select({ hash: sealedText.hash })
			.from(sealedText)
			.all()
			.map(({ hash }) => hash),
	)
	const gone = new Set(
		db
			.select({ client: erasure.clientId })
			.from(erasure)
			.all()
			.map(({ client }) => client),
	)
	let erased = 0
	for (const { seq, clientId, sealed } of db.select().from(event).all()) {
		if (sealed === null || there.has(sealed)) continue
		if (clientId === null || !gone.has(clientId))
			return { missing: `The words of line ${seq} are gone without an erasure.`, erased }
		erased += 1
	}
	return { missing: null, erased }
}

/** Goes through the whole record and names the first line that does not hold. */
export async function verify(viewer: Viewer): Promise<Verified | undefined> {
	if (denied(viewer, 'see the record', null) !== null) return undefined
	return read((db) => {
		const all = lines(db)
		const { missing, erased } = missingWords(db)
		const why = alteredWords(db) ?? alteredRevision(db) ?? missing
		const broken = firstBreak(all) ?? (why === null ? null : { seq: null, why })
		return { lines: all.length, head: all.at(-1)?.hash ?? null, broken, erased }
	})
}
