import { copyFileSync, existsSync, mkdirSync, renameSync, rmSync } from 'node:fs'
import { dirname, join } from 'node:path'
import Database from 'better-sqlite3'
import { carryFiles } from '../agreements/papers/carry'
import { connect, databaseFile } from '../open'
import { program, studioFolder } from './program'
import { checkSchema } from './start'

const tails = ['', '-wal', '-shm']

/** @throws when it is damaged, was tampered with, or is nobody's studio */
function checkBackup(copy: string, from: string): void {
	const sqlite = connect(copy)
	try {
		const integrity = sqlite.pragma('integrity_check', { simple: true })
		if (integrity !== 'ok') throw new Error(`${from} is damaged: ${String(integrity)}`)
		checkSchema(sqlite)
		if (sqlite.prepare('SELECT 1 FROM studio').get() === undefined) throw new Error(`There is no studio in ${from}.`)
	} finally {
		sqlite.close()
	}
}

/** To leave the write-ahead log a connection has to be alone with the file; a damaged file is nobody's. */
function isInUse(file: string): boolean {
	const sqlite = new Database(file, { timeout: 0 })
	try {
		sqlite.pragma('journal_mode = delete')
		return false
	} catch (error) {
		return error instanceof Database.SqliteError && error.code.startsWith('SQLITE_BUSY')
	} finally {
		sqlite.close()
	}
}

function putAside(live: string, before: string): void {
	for (const tail of tails) rmSync(`${before}${tail}`, { force: true })
	for (const tail of tails) if (existsSync(`${live}${tail}`)) renameSync(`${live}${tail}`, `${before}${tail}`)
}

/** `npm run restore -- <file>`: puts a backup in the place of the studio's file, which is kept beside it. The site has to be stopped. */
await program(async () => {
	const folder = studioFolder()
	const [, , from] = process.argv
	if (from === undefined || !existsSync(from)) throw new Error('Say which backup: npm run restore -- <file>')
	mkdirSync(folder, { recursive: true, mode: 0o700 })
	const live = databaseFile(folder)
	const [copy, before] = [`${live}.coming`, `${live}.before`]
	try {
		copyFileSync(from, copy)
		checkBackup(copy, from)
		const isThere = existsSync(live)
		if (isThere && isInUse(live)) throw new Error(`The site is running on ${folder}: stop it first.`)
		if (isThere) putAside(live, before)
		for (const kept of ['papers', 'scans']) carryFiles(join(dirname(from), kept), join(folder, kept))
		renameSync(copy, live)
		process.stdout.write(`${live} is the backup now${isThere ? `; what was there is ${before}` : ''}\n`)
	} finally {
		for (const tail of tails) rmSync(`${copy}${tail}`, { force: true })
	}
})
