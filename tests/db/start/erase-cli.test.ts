import { spawnSync } from 'node:child_process'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { clientPage } from '@/db/clients/read-clients'
import { rowsIn } from '../stage/rows'
import { close, emptyFolder, found, remove, stranger, studio } from '../stage/studio'

const of = studio()
const root = join(import.meta.dirname, '..', '..', '..')

/** The program as `npm run erase` starts it. */
function run(folder: string, ...words: string[]) {
	const program = ['--import', 'tsx', join('db', 'start', 'erase-cli.ts'), ...words]
	const { status, stdout, stderr } = spawnSync(process.execPath, program, {
		cwd: root,
		env: { ...process.env, DATA_DIR: folder },
		encoding: 'utf8',
	})
	return { status, stdout, stderr }
}
const bakery = () => of.cast().clients.bakery.id

describe('npm run erase', () => {
	test('with the name of the client erases, in the designer’s name', async () => {
		const { name } = found(await clientPage(await of.as('designer'), bakery())).client
		close()
		const { status, stdout } = run(of.folder(), bakery(), name)
		expect([status, stdout]).toEqual([0, expect.stringContaining('is erased')])
		const actor = stranger(of.folder(), (sqlite) =>
			sqlite.prepare("SELECT actor FROM event WHERE act = 'client erased' AND client_id = ?").pluck().get(bakery()),
		)
		expect(actor).toBe(`staff ${of.cast().people.designer.id}`)
		expect(rowsIn(of.folder()).sealed_text?.some((row) => row.includes(bakery()))).toBe(false)
	})

	test.each([
		['without the name', (): string[] => [bakery()], 'Marrowby Bakery'],
		['with another name', () => [bakery(), 'Marrowby bakery'], 'Marrowby Bakery'],
		['for a client who is not there', () => ['01999999-0000-7000-8000-00000000000a', 'x'], 'no such client'],
		['without an id', () => [], 'Say which client'],
		['with an id that is none', () => ['the bakery'], 'Say which client'],
	])('%s erases nothing and says what is missing', async (_, words, says) => {
		close()
		const before = rowsIn(of.folder())
		const { status, stderr } = run(of.folder(), ...words())
		expect([status, stderr]).toEqual([1, expect.stringContaining(says)])
		expect(stderr).not.toMatch(/\n\s+at /)
		expect(rowsIn(of.folder())).toEqual(before)
	})

	test('in a folder that holds no studio makes none', () => {
		const folder = emptyFolder()
		const { status, stderr } = run(folder, bakery(), 'Marrowby Bakery')
		expect([status, stderr]).toEqual([1, expect.stringContaining('holds no studio')])
		remove(folder)
	})
})
