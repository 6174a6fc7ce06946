import { existsSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { nextPaperDue } from '@/db/agreements/papers/due'
import { writePaper } from '@/db/agreements/papers/files'
import { keepPaper, sweepPapers } from '@/db/agreements/papers/keep'
import { readPaper } from '@/db/agreements/papers/read'
import { eraseClient } from '@/db/clients/erase'
import { backUp } from '@/db/house/backup'
import { verify } from '@/db/record/verify'
import { must } from '@/demo/play/must'
import { sha256 } from '@/lib/record/hash'
import { signingOf } from '../stage/agreement'
import { changesOf, refused } from '../stage/rows'
import { fillDisk, found, stranger, studio } from '../stage/studio'

const of = studio()
const { amend, issued, page, ready, sign } = signingOf(of)
const bytes = Buffer.from('%PDF-1.3 signed')
const fileOf = (hash: string, folder = 'papers') => join(of.folder(), folder, `${hash}.pdf`)

async function signed() {
	const id = await issued('bakery')
	must('sign', await sign('bakeryApprover', await ready(id, 'bakeryApprover')))
	return { id, due: found(await nextPaperDue(await of.as('system'))) }
}
const keep = async (due: Awaited<ReturnType<typeof signed>>['due'], what = bytes) =>
	keepPaper(await of.as('system'), { ...due, bytes: what }, of.stamp())

describe('the paper of a document that both have signed', () => {
	test('is due, from frozen rows, with the line that tells of the signature', async () => {
		const { id, due } = await signed()
		expect(due.hash).toBe((await page(id)).hash)
		expect(due.signatures.map(({ is }) => is).toSorted()).toEqual(['by the studio', 'on a screen'])
		expect(due.consent?.version).toBe(1)
		const line = stranger(of.folder(), (sqlite) =>
			sqlite.prepare("SELECT seq, hash FROM event WHERE act = 'agreement signed'").get(),
		)
		expect(due.head).toEqual(line)
		for (const who of ['designer', 'bakeryApprover', 'nobody'] as const)
			expect(await nextPaperDue(await of.as(who))).toBeUndefined()
	})

	test('is kept once: a file, its row and a line with its SHA-256; what stands is not written over', async () => {
		const { id, due } = await signed()
		const { said, did } = await changesOf(of.folder(), () => keep(due))
		expect([said, did]).toEqual([1, { agreement_paper: '+1', event: '+1' }])
		expect(await refused(of.folder(), () => keep(due, Buffer.from('%PDF- another')))).toBe(0)
		expect(readFileSync(fileOf(due.hash))).toEqual(bytes)
		expect(await nextPaperDue(await of.as('system'))).toBeUndefined()
		const facts = stranger(of.folder(), (sqlite) =>
			sqlite.prepare("SELECT facts FROM event WHERE act = 'agreement paper kept'").pluck().get(),
		)
		expect(JSON.parse(String(facts))).toMatchObject({ sha256: sha256(bytes) })
		const read = await readPaper(await of.as('bakeryApprover'), { agreement: id, document: null }, of.stamp())
		expect(read).toMatchObject({ ok: true, is: 'kept' })
		expect('bytes' in read && Buffer.from(read.bytes)).toEqual(bytes)
		expect((await page(id)).hasPaper).toBe(true)
	})

	test('is not served when it is another file than was kept', async () => {
		const { id, due } = await signed()
		await keep(due)
		writeFileSync(fileOf(due.hash), '%PDF-1.3 sIgned')
		await expect(
			readPaper(await of.as('bakeryApprover'), { agreement: id, document: null }, of.stamp()),
		).rejects.toThrow('is not what was kept')
	})

	test('is made anew after a crash between file and row, or swept', async () => {
		const { due } = await signed()
		fillDisk(of.folder(), 'event')
		await expect(keep(due)).rejects.toThrow('the disk is full')
		expect(existsSync(fileOf(due.hash))).toBe(true)
		stranger(of.folder(), (sqlite) => sqlite.exec('DROP TRIGGER full'))
		expect(await keep(due, Buffer.from('%PDF- anew'))).toBe(1)
		expect(await sweepPapers(await of.as('system'))).toBe(0)
		writePaper(sha256('left'), bytes)
		expect(await sweepPapers(await of.as('designer'))).toBe(0)
		expect(await sweepPapers(await of.as('system'))).toBe(1)
		expect(readdirSync(join(of.folder(), 'papers'))).toEqual([`${due.hash}.pdf`])
	})

	test('goes into the backup, and goes from both with an erasure', async () => {
		const { due } = await signed()
		await keep(due)
		await backUp(await of.as('system'), of.stamp())
		const copy = join('backup', 'papers')
		expect(readFileSync(fileOf(due.hash, copy))).toEqual(bytes)
		must('erase', await eraseClient(await of.as('designer'), of.cast().clients.bakery.id, of.stamp()))
		expect([existsSync(fileOf(due.hash)), existsSync(fileOf(due.hash, copy))]).toEqual([false, false])
		expect(await nextPaperDue(await of.as('system'))).toBeUndefined()
	})

	test('is not made once the words are erased', async () => {
		const { due } = await signed()
		must('erase', await eraseClient(await of.as('designer'), of.cast().clients.bakery.id, of.stamp()))
		expect(await nextPaperDue(await of.as('system'))).toBeUndefined()
		expect(await refused(of.folder(), () => keep(due))).toBe(0)
		rmSync(fileOf(due.hash), { force: true })
	})

	test('stays there to be read while a newer document waits, and no other agreement’s is found under it', async () => {
		const { id, due } = await signed()
		await keep(due)
		const reading = async (
			who: 'bakeryApprover' | 'bakeryViewer' | 'dentalApprover',
			document = due.hash,
			agreement = id,
		) => readPaper(await of.as(who), { agreement, document }, of.stamp())
		expect((await page(id, 'bakeryApprover')).signedBefore).toEqual([])
		await amend(id, 'bakery')
		expect((await page(id, 'bakeryApprover')).signedBefore).toEqual([{ hash: due.hash, number: 1 }])
		expect((await page(id, 'bakeryViewer')).signedBefore).toEqual([])
		const read = await reading('bakeryApprover')
		expect('bytes' in read && Buffer.from(read.bytes)).toEqual(bytes)
		expect(await reading('bakeryViewer')).toEqual({ ok: false, why: 'forbidden' })
		expect(await reading('dentalApprover')).toEqual({ ok: false, why: 'hidden' })
		const other = await issued('dental')
		expect(await reading('dentalApprover', due.hash, other)).toEqual({ ok: false, why: 'hidden' })
		expect(await reading('bakeryApprover', sha256('nothing'))).toEqual({ ok: false, why: 'hidden' })
	})

	test.each([
		['bakeryViewer', 'forbidden'],
		['helper', 'hidden'],
		['dentalApprover', 'hidden'],
	] as const)('is, for %s, %s', async (who, why) => {
		const { id, due } = await signed()
		await keep(due)
		expect(await readPaper(await of.as(who), { agreement: id, document: null }, of.stamp())).toEqual({ ok: false, why })
	})
})

describe('the record tells of a signing', () => {
	const broken = async () => found(await verify(await of.as('designer'))).broken

	test('wholly', async () => {
		await keep((await signed()).due)
		expect(await broken()).toBeNull()
	})

	test.each([
		['agreement_opening', 'DELETE FROM agreement_opening'],
		['agreement_opening', "UPDATE agreement_opening SET opened_as = 'PDF'"],
		['agreement_consent', 'DELETE FROM agreement_consent'],
		['agreement_consent', 'UPDATE agreement_consent SET version = 2'],
		['agreement_paper', 'DELETE FROM agreement_paper'],
		['agreement_paper', `UPDATE agreement_paper SET sha256 = '${'a'.repeat(64)}'`],
	])('in which %s is not altered unseen: %s', async (table, sql) => {
		await keep((await signed()).due)
		stranger(of.folder(), (sqlite) => {
			for (const kind of ['no_update', 'no_delete']) sqlite.exec(`DROP TRIGGER ${table}_${kind}`)
			sqlite.exec(sql)
		})
		expect(await broken()).toMatchObject({ why: 'the evidence says otherwise' })
	})
})
