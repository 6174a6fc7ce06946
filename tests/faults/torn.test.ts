import { copyFileSync, mkdtempSync, readFileSync, statSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { v7 } from 'uuid'
import { expect, test } from 'vitest'
import { saveClient } from '@/db/clients/save-client'
import { closeDatabase, databaseFile, openDatabase } from '@/db/open'
import { verify } from '@/db/record/verify'
import type { Stamp } from '@/db/stamp'
import { viewerOf } from '@/db/viewer'
import { id } from '@/lib/units/id'
import { copyOf, counts, seededStudio } from './studio'

const variants = Number(process.env.FAULT_ROUNDS ?? 6) * 8

type Damage = (log: Buffer, at: number) => Buffer

const cut: Damage = (log, at) => log.subarray(0, at)
const flipped: Damage = (log, at) => {
	const copy = Buffer.from(log)
	copy[at] = (copy[at] ?? 0) ^ 0xff
	return copy
}
const zeroed: Damage = (log, at) => Buffer.from(log).fill(0, at, at + 512)

test(`a write-ahead log cut, flipped or zeroed in ${variants} places leaves whole transactions and nothing else`, async () => {
	const studio = await seededStudio()
	const folder = copyOf(studio)
	openDatabase(folder)
	const designer = await viewerOf(studio.cast.people.designer.id)
	const stamp: Stamp = {
		at: studio.cast.now,
		id: <Of extends string>() => id<Of>(v7()),
		salt: () => new Uint8Array(16),
	}
	const fields = {
		kind: 'business',
		netDays: 30,
		exemptCertificate: null,
		exemptExpires: null,
		studioNote: '',
	} as const
	const before = counts(folder).lastSeq
	for (let n = 0; n < 12; n += 1) await saveClient(designer, null, { ...fields, name: `Slip ${n}` }, stamp)
	const image = mkdtempSync(join(tmpdir(), 'doorsill-torn-'))
	const [db, wal] = [databaseFile(image), `${databaseFile(image)}-wal`]
	copyFileSync(databaseFile(folder), join(image, 'base'))
	const log = readFileSync(`${databaseFile(folder)}-wal`)
	closeDatabase()
	expect(log.length).toBeGreaterThan(12 * 4096)
	const prefixes = new Set<number>()
	for (let n = 0; n < variants; n += 1) {
		const damage = [cut, flipped, zeroed][n % 3] ?? cut
		copyFileSync(join(image, 'base'), db)
		writeFileSync(wal, damage(log, Math.floor(((n + 1) * log.length) / (variants + 1))))
		const { integrity, lastSeq } = counts(image)
		expect(integrity).toBe('ok')
		expect(lastSeq).toBeGreaterThanOrEqual(before)
		prefixes.add(lastSeq)
		openDatabase(image)
		expect((await verify(await viewerOf('system')))?.broken).toBeNull()
		closeDatabase()
	}
	expect(prefixes.size).toBeGreaterThan(3)
	expect(statSync(join(image, 'base')).size).toBeGreaterThan(0)
})
