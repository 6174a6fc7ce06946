import {
	cpSync,
	existsSync,
	mkdirSync,
	mkdtempSync,
	readdirSync,
	readFileSync,
	renameSync,
	rmSync,
	writeFileSync,
} from 'node:fs'
import { join } from 'node:path'
import { closeSideFile } from '@/db/house/side-file'
import { closeDatabase, databaseFile } from '@/db/open'
import { start } from '@/db/start/start'
import type { Seeded } from '@/demo/seed'
import { sha256 } from '@/lib/record/hash'
import { day } from '@/lib/units/day'

export const today = day('2026-10-06')

export type Template = { readonly file: string; readonly cast: Seeded }

const root = join(import.meta.dirname, '..', '..', '..')
const kept = join(root, 'tests', 'output')

/** All that the played rows follow from. */
function codeHash(): string {
	const paths = ['db', 'demo', 'lib'].flatMap((floor) =>
		readdirSync(join(root, floor), { recursive: true, encoding: 'utf8' })
			.filter((path) => /\.(ts|sql)$/.test(path))
			.map((path) => join(floor, path)),
	)
	const texts = [...paths.toSorted(), 'package-lock.json'].flatMap((path) => [path, readFileSync(join(root, path))])
	return sha256(...texts)
}

async function play(folder: string): Promise<void> {
	const { seed } = await import('@/demo/seed')
	start(folder)
	writeFileSync(join(folder, 'cast.json'), JSON.stringify(await seed({ today })))
	closeDatabase()
	closeSideFile()
}

/** Into place at once, so that another worker finds it whole or not at all. */
function keep(made: string, folder: string): void {
	mkdirSync(kept, { recursive: true })
	const coming = mkdtempSync(join(kept, 'coming-'))
	cpSync(made, coming, { recursive: true })
	try {
		renameSync(coming, folder)
	} catch (error) {
		if (!existsSync(folder)) throw error
		rmSync(coming, { recursive: true })
	}
}

/** The cast's studio, played once for each state of the code. `make` gives a folder to play in. */
export async function played(make: () => string): Promise<Template> {
	const folder = join(kept, `cast-${codeHash().slice(0, 16)}`)
	if (!existsSync(folder)) {
		const made = make()
		await play(made)
		keep(made, folder)
		rmSync(made, { recursive: true })
	}
	const cast: Seeded = JSON.parse(readFileSync(join(folder, 'cast.json'), 'utf8'))
	return { file: databaseFile(folder), cast }
}
