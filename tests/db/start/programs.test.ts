import { spawnSync } from 'node:child_process'
import {
	copyFileSync,
	existsSync,
	mkdirSync,
	readdirSync,
	readFileSync,
	rmSync,
	symlinkSync,
	writeFileSync,
} from 'node:fs'
import { join } from 'node:path'
import Database from 'better-sqlite3'
import { beforeEach, describe, expect, test } from 'vitest'
import { writePaper } from '@/db/agreements/papers/files'
import { databaseFile } from '@/db/open'
import { sha256 } from '@/lib/record/hash'
import { close, emptyStudio, found, stranger, studio } from '../stage/studio'

const root = join(import.meta.dirname, '..', '..', '..')
const { PATH = '', HOME = '' } = process.env

type Program = 'backup' | 'restore' | 'verify' | 'erase'
type Ran = { readonly code: number | null; readonly says: string; readonly complains: string }

/** One of the four programs, as npm starts it, in a folder whose `.env` names the data. */
function run(cwd: string, program: Program, ...args: readonly string[]): Ran {
	const script = join(root, 'db', 'start', `${program}-cli.ts`)
	const { status, stdout, stderr } = spawnSync(
		process.execPath,
		['--import', import.meta.resolve('tsx'), script, ...args],
		{
			cwd,
			env: { PATH, HOME, NODE_ENV: 'production', TSX_TSCONFIG_PATH: join(root, 'tsconfig.json') },
			encoding: 'utf8',
		},
	)
	return { code: status, says: stdout, complains: stderr }
}

const named = (file: string) =>
	new Database(file, { readonly: true }).prepare<[], string>('SELECT name FROM studio').pluck().get()

const rename = (folder: string, name: string) =>
	stranger(folder, (sqlite) => sqlite.prepare('UPDATE studio SET name = ?').run(name))

describe('backup, restore and verify', () => {
	const of = studio()
	const desk = emptyStudio()

	beforeEach(() => {
		writeFileSync(join(desk.folder(), '.env'), `DATA_DIR=${of.folder()}\n`)
	})

	test('find the folder in the .env of the site, and make none elsewhere', () => {
		const { code, says } = run(desk.folder(), 'backup')
		expect([code, readdirSync(desk.folder())]).toEqual([0, ['.env']])
		expect(says.startsWith(join(of.folder(), 'backup'))).toBe(true)
		expect(named(says.trim())).toBe('Sedge & Lantern')
		expect(run(desk.folder(), 'verify')).toMatchObject({
			code: 0,
			says: expect.stringMatching(/^\d{2,} lines, whole;/),
		})
	})

	test('bring back what a backup holds, and keep what was there beside it', () => {
		const file = run(desk.folder(), 'backup').says.trim()
		rename(of.folder(), 'Reed & Rush')
		close()
		const { code, says } = run(desk.folder(), 'restore', file)
		expect([code, says]).toEqual([0, expect.stringContaining('studio.db.before')])
		expect(named(databaseFile(of.folder()))).toBe('Sedge & Lantern')
		expect(named(`${databaseFile(of.folder())}.before`)).toBe('Reed & Rush')
	})

	test('bring a backup back over a file that was damaged', () => {
		const file = run(desk.folder(), 'backup').says.trim()
		close()
		writeFileSync(databaseFile(of.folder()), 'scraps of what was a database once '.repeat(40))
		expect(run(desk.folder(), 'restore', file)).toMatchObject({ code: 0, complains: '' })
		expect(named(databaseFile(of.folder()))).toBe('Sedge & Lantern')
		expect(readFileSync(`${databaseFile(of.folder())}.before`, 'utf8')).toMatch(/^scraps/)
	})

	test('put a backup into a folder where nothing was', () => {
		const file = run(desk.folder(), 'backup').says.trim()
		const fresh = join(desk.folder(), 'fresh')
		writeFileSync(join(desk.folder(), '.env'), `DATA_DIR=${fresh}\n`)
		const { code, says } = run(desk.folder(), 'restore', file)
		expect([code, says]).toEqual([0, expect.not.stringContaining('before')])
		expect(named(databaseFile(fresh))).toBe('Sedge & Lantern')
	})

	test('bring back the files of signed documents with it, and leave those that are there', () => {
		const [lost, kept] = [sha256('lost'), sha256('kept')]
		writePaper(lost, Buffer.from('%PDF-1.3 lost'))
		writePaper(kept, Buffer.from('%PDF-1.3 as it was copied'))
		const file = run(desk.folder(), 'backup').says.trim()
		const paper = (document: string) => join(of.folder(), 'papers', `${document}.pdf`)
		rmSync(paper(lost))
		writeFileSync(paper(kept), '%PDF-1.3 as it stands')
		close()
		expect(run(desk.folder(), 'restore', file)).toMatchObject({ code: 0, complains: '' })
		expect(readFileSync(paper(lost), 'utf8')).toBe('%PDF-1.3 lost')
		expect(readFileSync(paper(kept), 'utf8')).toBe('%PDF-1.3 as it stands')
	})

	test('erase finds the client there as well, and asks for the name first', () => {
		// The tables' plans are looked for where the program runs, which for the others does not matter.
		symlinkSync(join(root, 'db'), join(desk.folder(), 'db'))
		const { id, name } = of.cast().clients.bakery
		const { code, complains } = run(desk.folder(), 'erase', id)
		expect([code, complains]).toEqual([1, expect.stringContaining(`${name} would be erased, for good.`)])
	})

	test('change nothing while the site runs', () => {
		const file = run(desk.folder(), 'backup').says.trim()
		rename(of.folder(), 'Reed & Rush')
		expect(run(desk.folder(), 'restore', file)).toMatchObject({
			code: 1,
			complains: expect.stringMatching(/^The site is running on .*: stop it first\.\n$/),
		})
		expect(named(databaseFile(of.folder()))).toBe('Reed & Rush')
		expect(readdirSync(of.folder()).filter((name) => /coming|before/.test(name))).toEqual([])
	})

	test('refuse a folder without a studio in one line, and leave it as it is', () => {
		const cases = [
			{ kind: 'not there', program: 'backup' },
			{ kind: 'empty', program: 'verify' },
			{ kind: 'nobody’s yet', program: 'backup' },
		] as const
		for (const { kind, program } of cases) {
			const data = join(desk.folder(), kind)
			writeFileSync(join(desk.folder(), '.env'), `DATA_DIR="${data}"\n`)
			if (kind !== 'not there') mkdirSync(data)
			if (kind === 'nobody’s yet') {
				copyFileSync(databaseFile(of.folder()), databaseFile(data))
				stranger(data, (sqlite) => sqlite.exec('DELETE FROM studio'))
			}
			const complains = `There is no studio in ${data}. DATA_DIR says where it is.\n`
			expect([kind, run(desk.folder(), program)]).toEqual([kind, { code: 1, says: '', complains }])
			expect([kind, existsSync(databaseFile(data)), existsSync(join(data, 'backup'))]).toEqual([
				kind,
				kind === 'nobody’s yet',
				false,
			])
		}
	})

	test('put nothing in place that is no backup of a studio', () => {
		close()
		const scraps = join(desk.folder(), 'scraps.db')
		writeFileSync(scraps, 'not a database at all, for all that it is long enough to be read as one'.repeat(20))
		const lax = join(desk.folder(), 'lax.db')
		new Database(lax).exec('CREATE TABLE studio (name TEXT)').close()
		const nobodys = join(desk.folder(), 'nobodys.db')
		copyFileSync(databaseFile(of.folder()), nobodys)
		const copy = new Database(nobodys)
		copy.exec('DELETE FROM studio')
		copy.close()
		const cases = [
			{ from: [], says: 'Say which backup: npm run restore -- <file>' },
			{ from: [join(desk.folder(), 'none.db')], says: 'Say which backup: npm run restore -- <file>' },
			{ from: [scraps], says: 'file is not a database' },
			{ from: [lax], says: 'The table studio is not STRICT any more.' },
			{ from: [nobodys], says: `There is no studio in ${nobodys}.` },
		]
		for (const { from, says } of cases)
			expect(run(desk.folder(), 'restore', ...from)).toEqual({ code: 1, says: '', complains: `${says}\n` })
		expect(named(databaseFile(of.folder()))).toBe('Sedge & Lantern')
		expect(readdirSync(of.folder()).filter((name) => /coming|before/.test(name))).toEqual([])
	})

	test('verify says where the record breaks, and ends in failure', () => {
		stranger(of.folder(), (sqlite) => {
			sqlite.exec('DROP TRIGGER event_no_update')
			sqlite.exec("UPDATE event SET actor = 'nobody' WHERE seq = 3")
		})
		const { code, says } = run(desk.folder(), 'verify')
		expect([code, found(says.split(';')[0])]).toEqual([1, expect.stringMatching(/broken at line 3/)])
	})
})
