import { count, eq } from 'drizzle-orm'
import type { Viewer } from '@/lib/access/viewer'
import type { Taken } from '@/lib/proposal/answer'
import { keysOf } from '@/lib/proposal/picked/palettes'
import type { RecordedAct } from '@/lib/record/acts'
import { canonical } from '@/lib/record/canonical'
import type { Standing } from '@/lib/season/standing'
import type { Day } from '@/lib/units/day'
import type { PersonId } from '@/lib/units/id'
import type { Tx } from '../../open'
import { enqueue } from '../../outbox/enqueue'
import { append } from '../../record/append'
import { seal } from '../../record/seal'
import { answer, type Message, person, proposal } from '../../schema'
import type { Stamp } from '../../stamp'
import type { Open } from './open'
import type { AnswerWords } from './words'

/** "2026-0012": the year of the answer in the studio's town and its number among all, never used twice. */
function nextReference(tx: Tx, today: Day): string {
	const [all] = tx.select({ n: count() }).from(answer).all()
	return `${today.slice(0, 4)}-${String((all?.n ?? 0) + 1).padStart(4, '0')}`
}

type Given = {
	readonly kind: 'approval' | 'change asked for' | 'skip'
	readonly act: RecordedAct
	readonly words: Pick<AnswerWords, 'purchaseOrder' | 'notes' | 'browser'>
	readonly taken?: Extract<Taken, { ok: true }>
	readonly ledger?: Standing
	readonly mails: readonly { readonly message: Message; readonly to: readonly PersonId[] }[]
}

/** What was taken, as the record tells it; nothing for an answer that takes nothing. */
const factsOf = (taken: Given['taken']) => ({
	option: taken?.option.key ?? null,
	extras: [...(taken?.choice.extras ?? [])],
	leftOut: [...(taken?.choice.leftOut ?? [])],
	totalCents: taken?.quote.totalCents ?? null,
})

/** Answer, ledger, line of the record and mails: all of it, or nothing. */
export function keep(
	tx: Tx,
	viewer: Viewer,
	{ found, to, revision, by, word }: Open,
	given: Given,
	stamp: Stamp,
): string {
	const { id, clientId } = found.row
	const [who] = tx.select({ name: person.name, address: person.email }).from(person).where(eq(person.id, by)).all()
	const named = { name: who?.name ?? '', address: who?.address ?? '', ...(word.is === 'studio' && { said: word.said }) }
	const wordsHash = seal(tx, stamp, clientId, { ...named, ...given.words })
	const { kind, taken } = given
	const reference = nextReference(tx, found.today)
	const facts = factsOf(taken)
	const places = taken === undefined ? {} : keysOf(taken)
	const lists = { extras: JSON.stringify(facts.extras), leftOut: JSON.stringify(facts.leftOut) }
	const what = { ...facts, ...lists, places: canonical(places) }
	const row = {
		reference,
		revisionId: revision.id,
		revisionHash: revision.hash,
		kind,
		wordsHash,
		by,
		word: word.is,
	}
	tx.insert(answer)
		.values({ id: stamp.id<'answer'>(), ...row, ...what, at: stamp.at })
		.run()
	tx.update(proposal)
		.set({ state: to, answeredAt: stamp.at, ...given.ledger })
		.where(eq(proposal.id, id))
		.run()
	const mixed = Object.keys(places).length > 0 ? { places } : {}
	const heard = word.is === 'studio' ? { word: word.is } : {}
	const record = { reference, revision: revision.hash, ...facts, ...mixed, ...heard }
	append(tx, stamp, viewer, {
		act: given.act,
		object: `proposal ${id}`,
		client: clientId,
		facts: record,
		sealed: wordsHash,
	})
	for (const { message, to: people } of given.mails)
		for (const each of people)
			enqueue(tx, stamp, { message, person: each, facts: { proposal: id, number: revision.number } })
	return reference
}
