import { mkdirSync, readdirSync, renameSync, rmSync } from 'node:fs'
import { join } from 'node:path'
import type { Viewer } from '@/lib/access/viewer'
import { isBackupDue } from '@/lib/record/is-backup-due'
import { type Moment, moment } from '@/lib/units/day'
import { backUpPapers } from '../agreements/papers/files'
import { backUpScans } from '../agreements/scans/files'
import { dataFolder } from '../open'
import type { Stamp } from '../stamp'
import { denied } from '../viewer'

const kept = 14

/** By hand, and by itself each day: neither pushes the other out. */
type Kind = 'studio' | 'daily'

const backupFolder = () => join(dataFolder(), 'backup')

/** The copies of a kind, the oldest first: their names hold the time. */
const copies = (kind: Kind): string[] =>
	readdirSync(backupFolder())
		.filter((name) => name.startsWith(`${kind}-`) && name.endsWith('.db'))
		.toSorted()

/** Whole or not at all: what is broken off has another name. */
async function copy(kind: Kind, { at }: Pick<Stamp, 'at'>): Promise<string> {
	const coming = join(backupFolder(), `${kind}.coming`)
	rmSync(coming, { force: true })
	await globalThis.doorsillDatabase?.sqlite.backup(coming)
	const file = join(backupFolder(), `${kind}-${at.replaceAll(':', '').slice(0, 17)}.db`)
	renameSync(coming, file)
	backUpPapers()
	backUpScans()
	for (const name of copies(kind).slice(0, -kept)) rmSync(join(backupFolder(), name))
	return file
}

function isOpenTo(viewer: Viewer): boolean {
	if (denied(viewer, 'keep house', null) !== null) return false
	mkdirSync(backupFolder(), { recursive: true, mode: 0o700 })
	return true
}

/** A whole copy of the studio's file under `backup/`, made by hand while it is in use; the last fourteen stay. */
export async function backUp(viewer: Viewer, stamp: Pick<Stamp, 'at'>): Promise<string | undefined> {
	return isOpenTo(viewer) ? copy('studio', stamp) : undefined
}

function newestDaily(): Moment | null {
	const [, date, hour, minute, second] = /-(.{10})T(\d\d)(\d\d)(\d\d)\.db$/.exec(copies('daily').at(-1) ?? '') ?? []
	return date === undefined ? null : moment(new Date(`${date}T${hour}:${minute}:${second}Z`))
}

/** The copy of the day, when it is due; the last fourteen stay. */
export async function backUpDaily(viewer: Viewer, stamp: Pick<Stamp, 'at'>): Promise<string | undefined> {
	return isOpenTo(viewer) && isBackupDue(newestDaily(), stamp.at) ? copy('daily', stamp) : undefined
}
