import { mkdirSync, readdirSync, rmSync } from 'node:fs'
import { join } from 'node:path'
import type { Viewer } from '@/lib/access/viewer'
import { dataFolder } from '../open'
import type { Stamp } from '../stamp'
import { denied } from '../viewer'

const kept = 14

/** A whole copy of the studio's file under `backup/`, made while it is in use; the last fourteen stay. */
export async function backUp(viewer: Viewer, { at }: Pick<Stamp, 'at'>): Promise<string | undefined> {
	if (denied(viewer, 'keep house', null) !== null) return undefined
	const folder = join(dataFolder(), 'backup')
	mkdirSync(folder, { recursive: true, mode: 0o700 })
	const file = join(folder, `studio-${at.replaceAll(':', '').slice(0, 17)}.db`)
	await globalThis.doorsillDatabase?.sqlite.backup(file)
	const old = readdirSync(folder)
		.filter((name) => name.endsWith('.db'))
		.toSorted()
		.slice(0, -kept)
	for (const name of old) rmSync(join(folder, name))
	return file
}
