import { spawnSync } from 'node:child_process'
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, expect, test, vi } from 'vitest'
import { must } from '@/demo/play/must'
import { signingOf } from '../../db/stage/agreement'
import { studio } from '../../db/stage/studio'
import { anew } from '../anew'
import { bare, pagesOf } from '../pdf/text'

vi.mock('server-only', () => ({}))

const root = join(import.meta.dirname, '..', '..', '..')
const of = studio()
const { issued, ready, sign } = signingOf(of)

let above: string
beforeAll(() => {
	above = mkdtempSync(join(tmpdir(), 'doorsill-export-'))
})
afterAll(() => rmSync(above, { recursive: true, force: true }))

function run(file: string, cwd: string, ...args: readonly string[]) {
	const { PATH = '', HOME = '' } = process.env
	const env = {
		PATH,
		HOME,
		DATA_DIR: of.folder(),
		NODE_ENV: 'production',
		TSX_TSCONFIG_PATH: join(root, 'tsconfig.json'),
	}
	const { status, stdout, stderr } = spawnSync(
		process.execPath,
		['--import', import.meta.resolve('tsx'), file, ...args],
		{ cwd, env: { ...env, NODE_ENV: 'production' }, encoding: 'utf8' },
	)
	return { status, says: stdout, complains: stderr }
}

const exporting = (to: string) => run(join(root, 'db', 'start', 'export-cli.ts'), above, to)

/** The last page prints the head of the record as "line N" and eight groups of eight. */
async function printedHead(pdf: Uint8Array): Promise<string[]> {
	const text = bare((await pagesOf(pdf)).join(''))
	const [, seq = '', hash = ''] = /Line(\d+)Hash([0-9a-f]{64})/.exec(text) ?? []
	expect(hash).not.toBe('')
	return [seq, hash]
}

test('what is exported is checked by its own program against the head that its PDF prints', async () => {
	const id = await issued('bakery')
	must('sign', await sign('bakeryApprover', await ready(id, 'bakeryApprover')))
	const made = await anew(of.cast().now, { DATA_DIR: of.folder() }, async () => {
		const { makePapers } = await import('@/app/server/answers/agreement/make-papers')
		return makePapers()
	})
	expect(made).toBe(1)
	expect(exporting('record')).toMatchObject({ status: 0, says: expect.stringContaining('1 sealed PDF files are in') })
	expect(exporting('record').complains).toContain('is there already')
	const folder = join(above, 'record')
	const [name = ''] = readdirSync(join(folder, 'papers'))
	const file = join(folder, 'papers', name)
	const head = await printedHead(readFileSync(file))
	const check = () => run(join(folder, 'verify.mjs'), tmpdir(), ...head)
	expect(check()).toMatchObject({
		status: 0,
		says: expect.stringMatching(/^All is right: \d+ lines, 1 PDF files\.\n$/),
	})

	const bytes = readFileSync(file)
	bytes[2000] = (bytes[2000] ?? 0) ^ 1
	writeFileSync(file, bytes)
	expect(check()).toMatchObject({ status: 1, says: expect.stringContaining(`${name} is not as it was sealed`) })
	bytes[2000] = (bytes[2000] ?? 0) ^ 1
	writeFileSync(file, bytes)

	const [seq = ''] = head
	const lines: unknown[] = JSON.parse(readFileSync(join(folder, 'events.json'), 'utf8'))
	writeFileSync(join(folder, 'events.json'), JSON.stringify(lines.slice(0, Number(seq) - 1)))
	expect(check()).toMatchObject({ status: 1, says: expect.stringContaining('the tail was cut off') })
})
