import { spawn } from 'node:child_process'
import { writeFileSync } from 'node:fs'
import { join } from 'node:path'
import Database from 'better-sqlite3'
import { v7 } from 'uuid'
import { expect, test, vi } from 'vitest'
import { closeDatabase, openDatabase } from '@/db/open'
import { verify } from '@/db/record/verify'
import { viewerOf } from '@/db/viewer'
import type { Seeded } from '@/demo/seed'
import { anew } from '../app/anew'
import { openMailServer } from '../app/mail/mail-server'
import { manyDrafts } from './many-drafts'
import { seededStudio } from './studio'

// The mark of a bundler that has no server side: there is no bundler here.
vi.mock('server-only', () => ({}))

const many = 200
const rounds = Number(process.env.FAULT_ROUNDS ?? 6)

/** Lets it publish for a while from the first that is out, and kills it; to the end when no time is given. @returns which it said were out */
function publishing(folder: string, ms?: number): Promise<string[]> {
	return new Promise((resolve) => {
		const said: string[] = []
		const child = spawn(process.execPath, ['--import', 'tsx', join('tests', 'faults', 'publishing.ts'), folder], {
			stdio: ['ignore', 'pipe', 'inherit'],
		})
		child.stdout.on('data', (chunk: Buffer) => {
			if (said.length === 0 && ms !== undefined) setTimeout(() => child.kill('SIGKILL'), ms)
			said.push(...chunk.toString().trim().split('\n'))
		})
		child.once('close', () => resolve(said))
	})
}

type Told = {
	readonly id: string
	readonly state: string
	readonly number: number
	readonly revisions: number
	readonly lines: number
	readonly mails: number
	readonly readers: number
	readonly contacts: number
}

/** What the record has of each draft. */
function tellOf(folder: string, drafts: readonly string[]): Told[] {
	const db = new Database(join(folder, 'studio.db'), { readonly: true })
	const mail = `FROM outbox WHERE message = 'proposal published' AND json_extract(facts, '$.proposal') = p.id`
	const told = db
		.prepare<[string], Told>(
			`SELECT p.id, p.state, p.revision_number AS number,
				(SELECT count(*) FROM revision r WHERE r.proposal_id = p.id
					AND r.offer_hash IN (SELECT hash FROM sealed_text) AND r.costing_hash IN (SELECT hash FROM sealed_text)) AS revisions,
				(SELECT count(*) FROM event WHERE act = 'proposal published' AND object = 'proposal ' || p.id) AS lines,
				(SELECT count(DISTINCT id) ${mail}) AS mails,
				(SELECT count(DISTINCT person_id) ${mail}) AS readers,
				(SELECT count(*) FROM contact c WHERE c.client_id = p.client_id AND c.ended_at IS NULL) AS contacts
			FROM proposal p WHERE p.id IN (SELECT value FROM json_each(?))`,
		)
		.all(JSON.stringify(drafts))
	db.close()
	return told
}

const none = { state: 'drafting', number: 0, revisions: 0, lines: 0, mails: 0, readers: 0 }
const whole = (contacts: number) => ({
	...{ state: 'waiting for an answer', number: 1, revisions: 1, lines: 1 },
	...{ mails: contacts, readers: contacts },
})

async function isWhole(folder: string): Promise<void> {
	openDatabase(folder)
	const found = await verify(await viewerOf('system'))
	closeDatabase()
	expect(found?.broken).toBeNull()
}

/** The mails that say that one of `drafts` is out, by what names them in the record. */
function announced(folder: string, drafts: readonly string[]): string[] {
	const db = new Database(join(folder, 'studio.db'), { readonly: true })
	const ids = db
		.prepare<[string], string>(
			`SELECT id FROM outbox WHERE message = 'proposal published'
				AND json_extract(facts, '$.proposal') IN (SELECT value FROM json_each(?))`,
		)
		.pluck()
		.all(JSON.stringify(drafts))
	db.close()
	return ids
}

/** Sends all that waits to a real mail server. @returns the Message-IDs (RFC 5322, section 3.6.4) that came over the wire */
async function onTheWire(folder: string, { now }: Seeded): Promise<string[]> {
	const server = await openMailServer()
	openDatabase(folder)
	await anew(now, { SMTP_URL: server.url, DATA_DIR: folder }, async () => {
		const { sendDue } = await import('@/app/server/mail/sender')
		while ((await sendDue()) > 0);
	})
	closeDatabase()
	await server.close()
	return server.mails.map(({ messageId = '' }) => messageId)
}

test(`killed ${rounds} times in the middle of publishing ${many}, each is out wholly or not at all, and once`, async () => {
	const { folder, cast } = await seededStudio()
	const drafts = manyDrafts(folder, cast.proposals.bicycles, many)
	writeFileSync(join(folder, 'cast.json'), JSON.stringify(cast))
	writeFileSync(join(folder, 'drafts.json'), JSON.stringify({ form: v7(), drafts }))
	const out = new Set<string>()
	for (let round = 0; round < rounds; round += 1) {
		for (const id of await publishing(folder, 20 + ((round * 53) % 130))) out.add(id)
		const told = tellOf(folder, drafts)
		expect(told).toHaveLength(many)
		for (const { id, contacts, ...stands } of told)
			expect([id, stands]).toEqual([id, stands.number === 0 ? none : whole(contacts)])
		const published = new Set(told.filter(({ number }) => number === 1).map(({ id }) => id))
		for (const id of out) if (id !== 'over') expect(published).toContain(id)
		await isWhole(folder)
	}
	expect(await publishing(folder)).toContain('over')
	for (const { id, contacts, ...stands } of tellOf(folder, drafts)) expect([id, stands]).toEqual([id, whole(contacts)])
	await isWhole(folder)

	const mails = await onTheWire(folder, cast)
	expect(new Set(mails).size).toBe(mails.length)
	const due = announced(folder, drafts).map((id) => `<${id}@127.0.0.1>`)
	expect(due.length).toBeGreaterThanOrEqual(many)
	expect(mails.filter((id) => due.includes(id)).toSorted()).toEqual(due.toSorted())
})
