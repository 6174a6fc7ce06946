import { spawnSync } from 'node:child_process'
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'

/** What a program of this machine says of a file, and how it ends. @throws with what to install where it is not there */
function asked(program: 'pdfsig' | 'qpdf', bytes: Uint8Array, ...before: string[]) {
	const folder = mkdtempSync(join(tmpdir(), 'doorsill-pdf-'))
	const file = join(folder, 'file.pdf')
	writeFileSync(file, bytes)
	const { error, status, stdout, stderr } = spawnSync(program, [...before, file], { encoding: 'utf8' })
	rmSync(folder, { recursive: true })
	if (error !== undefined) throw new Error(`${program} was not found: install poppler-utils and qpdf (Debian’s names).`)
	return { status, says: `${stdout}${stderr}` }
}

/** Its exit code is 0 for an altered file too: only its words tell. */
export const pdfsig = (bytes: Uint8Array): string => asked('pdfsig', bytes).says

export const qpdf = (bytes: Uint8Array) => asked('qpdf', bytes, '--check')
