import { eq } from 'drizzle-orm'
import type { RecordedAct } from '@/lib/record/acts'
import { canonical, type Json } from '@/lib/record/canonical'
import type { Entry, Kept } from '@/lib/record/chain'
import { sha256 } from '@/lib/record/hash'
import type { Reading } from '../open'
import { answer, erasure, rates, revision } from '../schema'
import { agreementActs, agreementEvidence } from './told-agreements'
import { moneyActs, moneyEvidence } from './told-money'

type Told = Pick<Entry, 'at' | 'actor' | 'object' | 'facts' | 'sealed'> & { readonly act: string }

const answers = {
	approval: 'proposal approved',
	'change asked for': 'change asked for',
	skip: 'season skipped',
} as const satisfies Record<string, RecordedAct>

const published: RecordedAct = 'proposal published'
const erased: RecordedAct = 'client erased'
const rated: RecordedAct = 'rates changed'
const answering = new Set<string>(Object.values(answers))
const agreeing = new Set<string>(agreementActs)
const telling = new Set<string>([published, erased, rated, ...answering, ...agreeing, ...moneyActs])

const says = ({ act, at, actor, object, facts, sealed }: Told): string =>
	canonical({ act, at, actor, object, facts, sealed })

/** Lists as they are kept with an answer: as text. */
const asText = (list: Json | undefined): Json => (list === undefined ? null : canonical(list))

/** What single places took, where one took another palette than the whole; lines from before there was that choice say nothing of it. */
const placesOf = (text: string) => (text === '{}' ? {} : { places: text })

function revisions(db: Reading): (readonly [says: string, what: string])[] {
	return db
		.select()
		.from(revision)
		.all()
		.map(({ proposalId, number, hash, publishedAt: at, publishedBy }) => {
			const told = { act: published, at, actor: `staff ${publishedBy}`, object: `proposal ${proposalId}`, sealed: null }
			return [says({ ...told, facts: { number, revision: hash } }), `revision ${number} of ${proposalId}`]
		})
}

function given(db: Reading): (readonly [says: string, what: string])[] {
	return db
		.select({ row: answer, to: revision })
		.from(answer)
		.innerJoin(revision, eq(revision.id, answer.revisionId))
		.all()
		.map(({ row: { kind, reference, revisionHash, option, places, extras, leftOut, totalCents, ...row }, to }) => {
			const actor = `${row.word === 'client' ? 'contact' : 'staff'} ${row.by}`
			const told = { act: answers[kind], at: row.at, actor, object: `proposal ${to.proposalId}`, sealed: row.wordsHash }
			const named = revisionHash === to.hash ? revisionHash : null
			const word = row.word === 'studio' ? { word: row.word } : {}
			const what = { option, ...placesOf(places), extras, leftOut, totalCents, ...word }
			return [says({ ...told, facts: { reference, revision: named, ...what } }), `the answer ${reference}`]
		})
}

function erasures(db: Reading): (readonly [says: string, what: string])[] {
	return db
		.select()
		.from(erasure)
		.all()
		.map(({ clientId, at, by }) => [
			says({ act: erased, at, actor: `staff ${by}`, object: `client ${clientId}`, facts: {}, sealed: null }),
			`the erasure of ${clientId}`,
		])
}

/** Lines that were written before they said what the rates are tell of them by their version alone. */
function versions(db: Reading, lines: readonly Kept[]): (readonly [says: string, what: string])[] {
	const silent = new Set(
		lines
			.filter(({ entry }) => entry.act === rated && canonical(entry.facts) === '{}')
			.map(({ entry }) => entry.object),
	)
	return db
		.select()
		.from(rates)
		.all()
		.map(({ version, document, madeAt: at, madeBy }) => {
			const object = `rates ${version}`
			const facts = silent.has(object) ? {} : { version, document: sha256(document) }
			const actor = madeBy === null ? 'system' : `staff ${madeBy}`
			return [says({ act: rated, at, actor, object, facts, sealed: null }), `the ${object}`]
		})
}

/** Who did it, whether as a contact or as the studio. */
const personOf = (actor: string) => actor.slice(actor.indexOf(' ') + 1)

const agreements = (db: Reading): (readonly [says: string, what: string])[] =>
	agreementEvidence(db).map(({ by: actor, what, ...told }) => [says({ ...told, actor }), what])

const money = (db: Reading): (readonly [says: string, what: string])[] =>
	moneyEvidence(db).map(({ what, ...told }) => [says(told), what])

/** A line of an agreement names what was issued or signed; whatever else it tells, no other piece of evidence does. */
function agreed({ facts, actor, ...entry }: Entry): string {
	const named = Object.entries(facts).filter(([key]) => ['version', 'number', 'document', 'as', 'sha256'].includes(key))
	return says({ ...entry, actor: personOf(actor), facts: Object.fromEntries(named) })
}

/** What the evidence has to say for the line to stand. */
function said(entry: Entry): string {
	if (agreeing.has(entry.act)) return agreed(entry)
	const { extras, leftOut, places, ...facts } = entry.facts
	const texts = {
		extras: asText(extras),
		leftOut: asText(leftOut),
		...(places !== undefined && { places: asText(places) }),
	}
	return says({ ...entry, facts: { ...facts, ...(answering.has(entry.act) ? texts : {}) } })
}

/** The first line whose evidence is gone or says otherwise; else the first piece of evidence that no line tells of. */
export function untold(
	db: Reading,
	lines: readonly Kept[],
): { readonly seq: number | null; readonly why: string } | null {
	const own = [...revisions(db), ...given(db), ...erasures(db), ...versions(db, lines)]
	const evidence = new Map([...own, ...agreements(db), ...money(db)])
	for (const { entry } of lines)
		if (telling.has(entry.act) && !evidence.delete(said(entry)))
			return { seq: entry.seq, why: 'the evidence says otherwise' }
	const [left] = evidence.values()
	return left === undefined ? null : { seq: null, why: `No line tells of ${left}.` }
}
