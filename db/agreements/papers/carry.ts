import { copyFileSync, existsSync, mkdirSync, readdirSync, renameSync } from 'node:fs'
import { join } from 'node:path'

const isKept = (name: string) => /\.(?:pdf|jpg)$/.test(name)

/**
 * Brings the files of signed documents, or the pictures of paper signatures, from one folder to another, each whole or
 * not at all; what is there stays as it is.
 */
export function carryFiles(from: string, to: string): void {
	if (!existsSync(from)) return
	mkdirSync(to, { recursive: true, mode: 0o700 })
	for (const name of readdirSync(from).filter(isKept)) {
		const file = join(to, name)
		if (existsSync(file)) continue
		copyFileSync(join(from, name), `${file}.coming`)
		renameSync(`${file}.coming`, file)
	}
}
