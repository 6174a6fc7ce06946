import { and, desc, eq } from 'drizzle-orm'
import type { Viewer } from '@/lib/access/viewer'
import { type Signature, signatureSchema } from '@/lib/agreement/signing/signature'
import { decide, type Refusal } from '@/lib/agreement/state'
import { type Hash, sha256 } from '@/lib/record/hash'
import { type Day, dayOf } from '@/lib/units/day'
import type { Id } from '@/lib/units/id'
import { read, type Tx, write } from '../../open'
import { enqueue } from '../../outbox/enqueue'
import { contactsOf, designers } from '../../proposals/recipients'
import { append } from '../../record/append'
import { isFirst } from '../../record/once'
import { seal, unseal } from '../../record/seal'
import { agreement, agreementSignature, event } from '../../schema'
import type { Stamp } from '../../stamp'
import { type Denied, hidden } from '../../viewer'
import { billedTwiceProblems } from '../billed-twice'
import { documentIn } from '../documents'
import { type FoundAgreement, findAgreement } from '../find'
import { planVisitsIn } from '../plan-visits'
import { scanBytes, writeScan } from '../scans/files'

export type RecordingPaper = {
	readonly agreement: Id<'agreement'>
	/** That was signed on paper: the one that was issued last, or nothing happens. */
	readonly document: Hash
	readonly signer: string
	readonly signedOn: Day
	/** The picture of it, as JPEG. */
	readonly scan: Uint8Array
	readonly once: Id<'once'>
}
export type RecordedPaper =
	| { readonly ok: true; readonly number: number }
	| {
			readonly ok: false
			readonly why: Refusal | 'erased' | 'billed twice' | 'before it was issued' | 'still to come' | 'sent before'
	  }
	| Denied

function dayRefusal({ row, studio, today }: FoundAgreement, signedOn: Day) {
	if (signedOn > today) return 'still to come' as const
	const issuedOn = row.issuedAt === null ? today : dayOf(row.issuedAt, studio.timeZone)
	return signedOn < issuedOn ? ('before it was issued' as const) : null
}

type Kept = { readonly found: FoundAgreement; readonly given: Signature; readonly until: Day }

function keep(tx: Tx, viewer: Viewer & { is: 'staff' }, { found, given, until }: Kept, stamp: Stamp): void {
	const { id, clientId: client, number } = found.row
	const { document } = given
	const words = seal(tx, stamp, client, given)
	tx.insert(agreementSignature)
		.values({ id: stamp.id<'signature'>(), document, side: 'client', words, by: viewer.person, at: stamp.at })
		.run()
	tx.update(agreement)
		.set({ state: 'signed', inForce: document, holdsUntil: until, answeredAt: stamp.at })
		.where(eq(agreement.id, id))
		.run()
	append(tx, stamp, viewer, {
		act: 'agreement signed',
		object: `agreement ${id}`,
		client,
		facts: { number, document, on: 'paper' },
		sealed: words,
	})
	const [head] = tx.select({ seq: event.seq, head: event.hash }).from(event).orderBy(desc(event.seq)).limit(1).all()
	for (const person of [...contactsOf(tx, client, { whoMayApprove: true }), ...designers(tx)])
		enqueue(tx, stamp, { message: 'agreement signed', person, facts: { agreement: id, number, ...head } })
}

/** Writes down that the client signed on paper: the studio's word with a picture of it, never the client's act on a screen. */
export async function recordPaper(viewer: Viewer, recording: RecordingPaper, stamp: Stamp): Promise<RecordedPaper> {
	const { agreement: id, document: hash, signer, signedOn, once } = recording
	const scan = sha256(recording.scan)
	return write((tx): RecordedPaper => {
		const found = findAgreement(tx, viewer, 'change agreements', id, stamp)
		if (!found.ok) return found
		if (viewer.is !== 'staff') return hidden
		const to = decide(found.state, { do: 'sign', document: hash })
		if (!to.ok) return to
		const document = documentIn(tx, hash)
		if (document === undefined) return { ok: false, why: 'erased' }
		if (billedTwiceProblems(tx, found, document).length > 0) return { ok: false, why: 'billed twice' }
		const no = dayRefusal(found, signedOn)
		if (no !== null) return { ok: false, why: no }
		if (!isFirst(tx, stamp, viewer, once)) return { ok: false, why: 'sent before' }
		const { clientId: client } = found.row
		const given = signatureSchema.parse({
			...{ v: 1, agreement: id, document: hash, is: 'on paper', client, signer, signedOn, scan },
			...{ recordedBy: viewer.person, recordedAt: stamp.at },
		})
		// The file goes first: a signature never names a picture that is not there.
		writeScan(scan, recording.scan)
		keep(tx, viewer, { found, given, until: document.to }, stamp)
		planVisitsIn(tx, stamp, viewer, { client, seasons: document.seasons })
		return { ok: true, number: found.row.number }
	})
}

/** The picture of the paper that was signed; undefined where it was signed on a screen, or not at all. */
export async function readScan(
	viewer: Viewer,
	{ agreement: id, document }: { readonly agreement: Id<'agreement'>; readonly document: Hash },
	stamp: Pick<Stamp, 'at'>,
): Promise<Uint8Array<ArrayBuffer> | undefined> {
	return read((db) => {
		const found = findAgreement(db, viewer, 'see agreements', id, stamp)
		if (!found.ok) return undefined
		const theirs = and(eq(agreementSignature.document, document), eq(agreementSignature.side, 'client'))
		const [row] = db.select().from(agreementSignature).where(theirs).all()
		const given = signatureSchema.safeParse(row && unseal(db, row.words))
		const isIt = given.success && given.data.is === 'on paper' && given.data.agreement === id
		return isIt && given.data.is === 'on paper' ? scanBytes(given.data.scan) : undefined
	})
}
