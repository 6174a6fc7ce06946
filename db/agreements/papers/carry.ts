import { copyFileSync, existsSync, mkdirSync, readdirSync, renameSync } from 'node:fs'
import { join } from 'node:path'

/** Brings the files of signed documents from one folder to another, each whole or not at all; what is there stays as it is. */
export function carryPapers(from: string, to: string): void {
	if (!existsSync(from)) return
	mkdirSync(to, { recursive: true, mode: 0o700 })
	for (const name of readdirSync(from).filter((each) => each.endsWith('.pdf'))) {
		const file = join(to, name)
		if (existsSync(file)) continue
		copyFileSync(join(from, name), `${file}.coming`)
		renameSync(`${file}.coming`, file)
	}
}
