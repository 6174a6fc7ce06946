import { asc, eq } from 'drizzle-orm'
import type { Viewer } from '@/lib/access/viewer'
import { canonical } from '@/lib/record/canonical'
import { type Break, type Entry, firstBreak, type Kept } from '@/lib/record/chain'
import { type Hash, hashOf, sealedHash } from '@/lib/record/hash'
import type { ClientId } from '@/lib/units/id'
import { type Reading, read } from '../open'
import { erasure, event, proposal, revision, sealedText } from '../schema'
import { denied } from '../viewer'
import { untold } from './told'

export type Verified = {
	readonly lines: number
	/** Hash of the last line: kept elsewhere, it shows a tail that was cut off. */
	readonly head: Hash | null
	readonly broken: Break | { readonly seq: number | null; readonly why: string } | null
	readonly erased: number
}

/** Facts that are not in their one canonical text any more were not written by us: they give another hash. */
function factsOf(text: string): Entry['facts'] {
	try {
		const facts: Entry['facts'] = JSON.parse(text)
		return canonical(facts) === text ? facts : { altered: text }
	} catch {
		return { altered: text }
	}
}

function lines(db: Reading): Kept[] {
	return db
		.select()
		.from(event)
		.orderBy(asc(event.seq))
		.all()
		.map(({ hash, clientId, facts, ...row }) => {
			const entry: Entry = { ...row, client: clientId, facts: factsOf(facts) }
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

/** Words that evidence names and that are gone without an erasure; and how many lines have lost theirs by one. */
function missingWords(db: Reading): { missing: string | null; erased: number } {
	const fate = fateOfWords(db)
	let erased = 0
	for (const { seq, clientId, sealed } of db.select().from(event).all()) {
		const is = sealed === null ? 'there' : fate(sealed, clientId)
		if (is === 'missing') return { missing: `The words of line ${seq} are gone without an erasure.`, erased }
		if (is === 'erased') erased += 1
	}
	const out = db.select({ row: revision, client: proposal.clientId }).from(revision)
	for (const { row, client } of out.innerJoin(proposal, eq(proposal.id, revision.proposalId)).all())
		if ([row.offerHash, row.costingHash].some((hash) => fate(hash, client) === 'missing'))
			return {
				missing: `The words of revision ${row.number} of ${row.proposalId} are gone without an erasure.`,
				erased,
			}
	return { missing: null, erased }
}

function verified(db: Reading): Verified {
	const all = lines(db)
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
