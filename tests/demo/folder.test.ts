import { spawnSync } from 'node:child_process'
import { existsSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach, describe, expect, test } from 'vitest'
import { closeSideFile } from '@/db/house/side-file'
import { closeDatabase, databaseFile } from '@/db/open'
import { start } from '@/db/start/start'
import { demoMark, removeDemo } from '@/demo/machine.mjs'

const root = join(import.meta.dirname, '..', '..')
let folder = ''

beforeEach(() => {
	folder = mkdtempSync(join(tmpdir(), 'doorsill-folder-'))
})
afterEach(() => rmSync(folder, { recursive: true, force: true }))

/** A program of the demo over `folder`. It has to end before it builds or serves anything. */
function run(...program: readonly string[]) {
	const { PATH = '', HOME = '' } = process.env
	const { status, stderr } = spawnSync(process.execPath, program, {
		cwd: root,
		env: { PATH, HOME, NODE_ENV: 'production', DEMO: '1', DATA_DIR: folder },
		encoding: 'utf8',
		timeout: 15_000,
	})
	return { status, stderr }
}

/** A studio that was started once and that nobody has set up yet. */
function makeStudio(): Buffer {
	start(folder)
	closeDatabase()
	closeSideFile()
	writeFileSync(join(folder, 'key'), 'a studio’s own')
	return readFileSync(databaseFile(folder))
}

describe('a folder with a studio that is no demo', () => {
	test.each([
		{ what: 'begins anew', program: ['demo/run.mjs', '--fresh'] },
		{ what: 'starts', program: ['demo/run.mjs'] },
		{ what: 'seeds', program: ['--import', 'tsx', 'demo/make.ts'] },
	])('stays as it is when a demo $what there', ({ program }) => {
		const before = makeStudio()
		const names = readdirSync(folder)
		const { status, stderr } = run(...program)
		expect([status, stderr]).toEqual([1, expect.stringContaining(`${folder} holds a studio that is no demo`)])
		expect(readdirSync(folder)).toEqual(names)
		expect(readFileSync(databaseFile(folder)).equals(before)).toBe(true)
	})
})

describe('beginning a demo anew', () => {
	const mark = 'demo'

	test('removes a demo and all that is in it', () => {
		writeFileSync(join(folder, mark), demoMark)
		mkdirSync(join(folder, 'mail'))
		removeDemo(folder)
		expect(existsSync(folder)).toBe(false)
	})

	test.each([
		{ what: 'an empty one', make: () => undefined },
		{ what: 'one with a folder of that name', make: () => mkdirSync(join(folder, mark)) },
		{ what: 'one with a file of that name', make: () => writeFileSync(join(folder, mark), 'of somebody else') },
	])('leaves a folder that is none: $what', ({ make }) => {
		make()
		const names = readdirSync(folder)
		removeDemo(folder)
		expect(readdirSync(folder)).toEqual(names)
	})

	test('minds no folder that is not there', () => {
		rmSync(folder, { recursive: true })
		expect(() => removeDemo(folder)).not.toThrow()
	})
})
