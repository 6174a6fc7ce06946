import { join } from 'node:path'
import Database from 'better-sqlite3'

/**
 * A second file for what may be lost without harm: activity of sessions, counters of requests, what was typed into a form that
 * went wrong. Not synced, so that a flood of it costs the studio's file nothing.
 */
const tables = `
CREATE TABLE IF NOT EXISTS activity (session TEXT PRIMARY KEY, at TEXT NOT NULL) STRICT;
CREATE TABLE IF NOT EXISTS counter (key TEXT PRIMARY KEY, points INTEGER NOT NULL DEFAULT 0, expire INTEGER) STRICT;
CREATE TABLE IF NOT EXISTS attempt (key TEXT PRIMARY KEY, owner TEXT NOT NULL, typed TEXT NOT NULL, errors TEXT NOT NULL, at TEXT NOT NULL) STRICT;
`

declare global {
	var doorsillSideFile: Database.Database | undefined
}

export function openSideFile(folder: string): void {
	closeSideFile()
	const side = new Database(join(folder, 'side.db'))
	side.pragma('journal_mode = wal')
	side.pragma('synchronous = off')
	side.pragma('busy_timeout = 2000')
	side.exec(tables)
	globalThis.doorsillSideFile = side
}

export function closeSideFile(): void {
	globalThis.doorsillSideFile?.close()
	globalThis.doorsillSideFile = undefined
}

export function sideFile(): Database.Database {
	if (globalThis.doorsillSideFile === undefined) throw new Error('The side file is not open yet.')
	return globalThis.doorsillSideFile
}
