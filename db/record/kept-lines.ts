import { asc } from 'drizzle-orm'
import { canonical } from '@/lib/record/canonical'
import type { Entry, Kept } from '@/lib/record/chain'
import type { Reading } from '../open'
import { event } from '../schema'

/** Facts that are not in their one canonical text any more were not written by us: they give another hash. */
function factsOf(text: string): Entry['facts'] {
	try {
		const facts: Entry['facts'] = JSON.parse(text)
		return canonical(facts) === text ? facts : { altered: text }
	} catch {
		return { altered: text }
	}
}

/** Every line of the record as it was chained, the first first. */
export function keptLines(db: Reading): Kept[] {
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
