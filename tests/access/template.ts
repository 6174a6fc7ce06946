import { spawnSync } from 'node:child_process'
import { existsSync, mkdirSync, rmSync } from 'node:fs'
import { join } from 'node:path'

const root = join(import.meta.dirname, '..', '..')

/** A studio in which every word that only the studio may read is a sentinel. */
export const template = join(root, 'tests', 'output', 'access')

/** Seeds it once for all files. */
export default function prepare(): void {
	if (!existsSync(join(root, '.next', 'BUILD_ID')))
		throw new Error('There is no build: these tests ask the built site.')
	rmSync(template, { recursive: true, force: true })
	mkdirSync(template, { recursive: true })
	const own = { DEMO: '1', BARE: '1', CANARY: '1', DATA_DIR: template, PORT: '3000', SITE_URL: '', SMTP_URL: '' }
	const made = spawnSync(process.execPath, ['--import', 'tsx', join('demo', 'make.ts')], {
		cwd: root,
		env: { ...process.env, ...own },
		encoding: 'utf8',
	})
	if (made.status !== 0) throw new Error(`The cast could not be seeded:\n${made.stderr}`)
	const script = join('tests', 'access', 'site', 'issue-agreements.ts')
	const issued = spawnSync(process.execPath, ['--import', 'tsx', script, template], { cwd: root, encoding: 'utf8' })
	if (issued.status !== 0) throw new Error(`The agreements could not be issued:\n${issued.stderr}`)
	const asking = ['--import', 'tsx', join('tests', 'access', 'site', 'asked-for.ts'), template]
	const asked = spawnSync(process.execPath, asking, { cwd: root, env: process.env, encoding: 'utf8' })
	if (asked.status !== 0) throw new Error(`Nobody could be asked for anything:\n${asked.stderr}`)
}
