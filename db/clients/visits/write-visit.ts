import { eq } from 'drizzle-orm'
import type { Viewer } from '@/lib/access/viewer'
import type { RecordedAct } from '@/lib/record/acts'
import type { PersonId, PhotoId, PlaceId } from '@/lib/units/id'
import { decide, type VisitCommand, type VisitStep } from '@/lib/visit/decide'
import type { VisitKind } from '@/lib/visit/visit'
import type { Tx } from '../../open'
import { enqueue } from '../../outbox/enqueue'
import { contactsOf } from '../../proposals/recipients'
import { append } from '../../record/append'
import { visit } from '../../schema'
import type { Stamp } from '../../stamp'
import { hidden } from '../../viewer'
import { type FoundVisit, isPlaceOf } from './find'
import { install } from './install'
import { designOf } from './new-visit'
import { addPhotos, dropPhotos } from './photos/rows'
import type { Placed } from './photos/with-photos'
import { Refused } from './refused'

export type Written = {
	readonly kind: VisitKind
	readonly place: PlaceId | null
	readonly came: string
	readonly clientNote: string
	readonly studioNote: string
	/** Photos to take out of it. */
	readonly out: readonly PhotoId[]
	/** Whether the client's contacts hear of a visit that was made. */
	readonly tell: boolean
}

type Writing = {
	readonly by: PersonId
	readonly command: VisitCommand
	readonly written: Written
	readonly placed: readonly Placed[]
}

const recorded: Readonly<Record<VisitStep, RecordedAct>> = {
	planned: 'visit planned',
	made: 'visit made',
	corrected: 'visit corrected',
	dropped: 'visit dropped',
}

/**
 * The step, what is written about it, its photos, its line of the record, the proposal and the mail.
 * @returns the photos that were taken out
 * @throws {Refused} so that nothing of it stays
 */
export function writeVisit(
	tx: Tx,
	stamp: Stamp,
	viewer: Viewer,
	{ row, today }: Pick<FoundVisit, 'row' | 'today'>,
	{ by, command, written, placed }: Writing,
): PhotoId[] {
	const { id, clientId: client } = row
	const { kind, place, came, clientNote, studioNote } = written
	if (!isPlaceOf(tx, client, place)) throw new Refused(hidden)
	const decision = decide(row.state, command, today)
	if (!decision.ok) throw new Refused(decision)
	const { to: state, step } = decision
	const proposalId = row.proposalId ?? designOf(tx, client, row.seasonId)
	const doneAt = state === 'done' ? (row.doneAt ?? stamp.at) : null
	const day = 'day' in command ? command.day : row.day
	const words = { came, clientNote, studioNote }
	tx.update(visit)
		.set({ kind, placeId: place, state, day, doneAt, proposalId, ...words })
		.where(eq(visit.id, id))
		.run()
	const out = dropPhotos(tx, id, written.out)
	const added = addPhotos(tx, stamp, { client, visit: id, by }, placed)
	const facts = { kind, day, photos: added, out: out.length }
	append(tx, stamp, viewer, { act: recorded[step], object: `visit ${id}`, client, facts })
	if (state === 'done') follow(tx, stamp, viewer, { ...row, kind, proposalId }, written.tell)
	return out
}

/** What follows from a visit that was made: a design is in, and the client hears of it. */
function follow(tx: Tx, stamp: Stamp, viewer: Viewer, made: FoundVisit['row'], tell: boolean): void {
	const { id, clientId, kind, proposalId } = made
	// The form's key has gone through with the visit's own line.
	const { once: _, ...rest } = stamp
	if (kind === 'install' && proposalId !== null && !install(tx, rest, viewer, proposalId))
		throw new Refused({ ok: false, why: 'not approved' })
	if (!tell) return
	for (const person of contactsOf(tx, clientId))
		enqueue(tx, stamp, { message: 'visit made', person, facts: { visit: id } })
}
