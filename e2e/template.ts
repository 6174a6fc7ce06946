import { spawnSync } from 'node:child_process'
import { mkdirSync, rmSync } from 'node:fs'
import { join } from 'node:path'

/** Where the seeded studio lies that each story begins with a copy of. */
export const template = join(import.meta.dirname, 'output', 'template')

/** Seeds the cast once, as of today, with no agreement and no money: a story makes its own. */
export default function prepare(): void {
	rmSync(template, { recursive: true, force: true })
	mkdirSync(template, { recursive: true })
	const own = { DEMO: '1', BARE: '1', DATA_DIR: template, PORT: '3000', SITE_URL: '', SMTP_URL: '' }
	const env = { ...process.env, ...own }
	const made = spawnSync(process.execPath, ['--import', 'tsx', join('demo', 'make.ts')], { env, encoding: 'utf8' })
	if (made.status !== 0) throw new Error(`The cast could not be seeded:\n${made.stderr}`)
}
