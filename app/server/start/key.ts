import { randomBytes } from 'node:crypto'
import { chmodSync, readFileSync, statSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'

/**
 * The site's own secret, in the data folder so that a copy of the folder is a copy of everything; made at the first
 * start, readable by nobody else.
 * @throws when others on the machine could read it
 */
export function siteKey(folder: string): string {
	const file = join(folder, 'key')
	try {
		writeFileSync(file, randomBytes(32).toString('base64url'), { flag: 'wx', mode: 0o600 })
		chmodSync(file, 0o600)
	} catch (error) {
		if (!(error instanceof Error && 'code' in error && error.code === 'EEXIST')) throw error
	}
	if ((statSync(file).mode & 0o077) !== 0) throw new Error(`${file} can be read by others: chmod 600 it.`)
	return readFileSync(file, 'utf8')
}
