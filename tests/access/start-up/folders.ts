import { chmodSync, cpSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll } from 'vitest'
import { template } from '../template'

/** Where the folders of a file's tests lie; they go after the last of them. */
export let folder: string

beforeAll(() => {
	folder = mkdtempSync(join(tmpdir(), 'doorsill-start-'))
})

afterAll(() => {
	rmSync(folder, { recursive: true, force: true })
})

let copies = 0
/** A folder to start from: with nothing in it, a demo, a studio, or a key that others can read. */
export function copyOf(kind: 'empty' | 'demo' | 'studio' | 'open key'): string {
	copies += 1
	const made = join(folder, String(copies))
	if (kind === 'empty' || kind === 'open key') mkdirSync(made)
	else cpSync(template, made, { recursive: true })
	if (kind === 'studio') rmSync(join(made, 'demo'))
	if (kind === 'open key') {
		writeFileSync(join(made, 'key'), 'a'.repeat(43))
		chmodSync(join(made, 'key'), 0o644)
	}
	return made
}

/** The address that a studio is at. */
export const studio = 'https://studio.example'
