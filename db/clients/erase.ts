import { existsSync, readdirSync, rmSync } from 'node:fs'
import { join } from 'node:path'
import { and, eq, inArray, isNull, notInArray, or, sql } from 'drizzle-orm'
import type { Viewer } from '@/lib/access/viewer'
import type { Hash } from '@/lib/record/hash'
import type { ClientId, Id, PersonId, PhotoId } from '@/lib/units/id'
import { documentsOf } from '../agreements/documents'
import { removePapers } from '../agreements/papers/files'
import { removeScans } from '../agreements/scans/files'
import { dataFolder, type Tx, write } from '../open'
import { append } from '../record/append'
import {
	agreement,
	client,
	contact,
	container,
	entry,
	erasure,
	invoice,
	knownDevice,
	outbox,
	person,
	place,
	proposal,
	sealedText,
	siteColour,
	staff,
	visit,
} from '../schema'
import { shutOut } from '../sign-in/shut-out'
import type { Stamp } from '../stamp'
import { type Denied, denied, hidden } from '../viewer'
import { closeAgreements, scansOf } from './erased/close-agreements'
import { closeProposals } from './erased/close-proposals'
import { eraseVisits } from './erased/erase-visits'
import { removePhotos } from './visits/photos/files'

const erased = 'erased'

/** Contacts of this client who belong to no other and are not staff: they go as persons too. */
function personsOf(tx: Tx, of: ClientId): PersonId[] {
	const own = tx
		.select({ id: contact.personId })
		.from(contact)
		.where(eq(contact.clientId, of))
		.all()
		.map(({ id }) => id)
	const elsewhere = tx
		.select({ id: contact.personId })
		.from(contact)
		.where(and(inArray(contact.personId, own), notInArray(contact.clientId, [of])))
		.all()
	const working = tx.select({ id: staff.personId }).from(staff).where(inArray(staff.personId, own)).all()
	const kept = new Set([...elsewhere, ...working].map(({ id }) => id))
	return own.filter((id) => !kept.has(id))
}

function erasePersons(tx: Tx, people: readonly PersonId[], stamp: Stamp): void {
	for (const id of people) {
		shutOut(tx, id, stamp)
		tx.delete(knownDevice).where(eq(knownDevice.personId, id)).run()
		tx.update(outbox)
			.set({ facts: '{}' })
			.where(and(eq(outbox.personId, id), eq(outbox.message, 'address changed')))
			.run()
		tx.update(person)
			.set({ name: erased, email: `${id}@erased.invalid`, handle: id, emailVerified: null })
			.where(eq(person.id, id))
			.run()
	}
}

function erasePlaces(tx: Tx, of: ClientId): void {
	const here = tx.select({ id: place.id }).from(place).where(eq(place.clientId, of))
	tx.update(container).set({ name: erased }).where(inArray(container.placeId, here)).run()
	tx.update(siteColour).set({ name: erased }).where(inArray(siteColour.placeId, here)).run()
	tx.update(place).set({ name: erased, address: erased, accessNote: '' }).where(eq(place.clientId, of)).run()
}

/** Mails about what a client owes and paid. */
function aboutMoney(tx: Tx, of: ClientId) {
	const invoices = tx.select({ number: invoice.number }).from(invoice).where(eq(invoice.clientId, of))
	const entries = tx.select({ id: entry.id }).from(entry).where(eq(entry.clientId, of))
	return or(
		sql`json_extract(${outbox.facts}, '$.invoice') IN ${invoices}`,
		sql`json_extract(${outbox.facts}, '$.entry') IN ${entries}`,
		sql`json_extract(${outbox.facts}, '$.account') = ${of}`,
	)
}

/** Mails to those who go, and mails to anybody about the client. */
function mailsOf(tx: Tx, of: ClientId, people: readonly PersonId[]): Id<'mail'>[] {
	const own = tx.select({ id: proposal.id }).from(proposal).where(eq(proposal.clientId, of))
	const visits = tx.select({ id: visit.id }).from(visit).where(eq(visit.clientId, of))
	const about = sql`json_extract(${outbox.facts}, '$.proposal') IN ${own}`
	const agreements = tx.select({ id: agreement.id }).from(agreement).where(eq(agreement.clientId, of))
	const ofAgreement = sql`json_extract(${outbox.facts}, '$.agreement') IN ${agreements}`
	const ofVisit = sql`json_extract(${outbox.facts}, '$.visit') IN ${visits}`
	const theirs = or(about, ofAgreement, ofVisit, aboutMoney(tx, of), inArray(outbox.personId, [...people]))
	return tx
		.select({ id: outbox.id })
		.from(outbox)
		.where(theirs)
		.all()
		.map(({ id }) => id)
}

/** What was mailed to files, as in a studio without a mail server; a crash before this leaves them for another erasure. */
function deleteCopies(mails: readonly Id<'mail'>[]): void {
	const folder = join(dataFolder(), 'mail')
	if (!existsSync(folder)) return
	const theirs = new Set<string>(mails)
	for (const name of readdirSync(folder)) {
		const [id = ''] = name.split('.')
		if (theirs.has(id)) rmSync(join(folder, name), { force: true })
	}
}

type Erased = {
	readonly ok: true
	readonly mails: readonly Id<'mail'>[]
	readonly photos: readonly PhotoId[]
	readonly papers: readonly Hash[]
	readonly scans: readonly Hash[]
}

function eraseIn(tx: Tx, viewer: Viewer, by: PersonId, of: ClientId, stamp: Stamp): Erased | Denied {
	if (tx.select().from(client).where(eq(client.id, of)).all().length === 0) return hidden
	const people = personsOf(tx, of)
	const mails = mailsOf(tx, of, people)
	tx.insert(erasure).values({ id: stamp.id<'erasure'>(), clientId: of, at: stamp.at, by }).run()
	append(tx, stamp, viewer, { act: 'client erased', object: `client ${of}`, client: of })
	const scans = scansOf(tx, of)
	tx.delete(sealedText).where(eq(sealedText.clientId, of)).run()
	const unsent = and(inArray(outbox.id, mails), isNull(outbox.sentAt), isNull(outbox.droppedAt))
	tx.update(outbox).set({ droppedAt: stamp.at }).where(unsent).run()
	erasePersons(tx, people, stamp)
	erasePlaces(tx, of)
	closeProposals(tx, stamp, viewer, of)
	closeAgreements(tx, stamp, viewer, of)
	const photos = eraseVisits(tx, of)
	tx.update(contact).set({ endedAt: stamp.at }).where(eq(contact.clientId, of)).run()
	const blank = { name: erased, studioNote: '', exemptCertificate: null, exemptExpires: null, archivedAt: stamp.at }
	tx.update(client).set(blank).where(eq(client.id, of)).run()
	return { ok: true, mails, photos, scans, papers: documentsOf(tx, of) }
}

/**
 * Erases a client's words on lawful demand: names, addresses, letters, notes, photos, copies of mails. What was done and when,
 * and every hash, stays, and the chain still holds; what is open is taken back, and nothing more is written about them.
 * Deleted bytes are overwritten; what the log still holds goes within the hour. Backups keep the words until they go.
 */
export async function eraseClient(viewer: Viewer, of: ClientId, stamp: Stamp): Promise<{ readonly ok: true } | Denied> {
	const no = denied(viewer, 'erase a client', of)
	if (no !== null || viewer.is !== 'staff') return no ?? hidden
	const said = write((tx) => eraseIn(tx, viewer, viewer.person, of, stamp))
	if (!said.ok) return said
	deleteCopies(said.mails)
	removePhotos(said.photos)
	removePapers(said.papers)
	removeScans(said.scans)
	return { ok: true }
}
