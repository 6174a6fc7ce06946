import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { verify } from '@/db/record/verify'
import { start } from '@/db/start/start'
import { viewerOf } from '@/db/viewer'
import { dump } from '../../fixtures/dump'
import { rowsIn } from '../stage/rows'
import { close, emptyFolder, emptyStudio, remove, stranger, studio } from '../stage/studio'

const place = join(import.meta.dirname, '..', '..', 'fixtures', 'db')
const fixtures = readdirSync(place).filter((name) => name.endsWith('.sql'))

const load = (folder: string, sql: string) => stranger(folder, (sqlite) => sqlite.exec(sql))
const countsIn = (folder: string) =>
	Object.fromEntries(Object.entries(rowsIn(folder)).map(([table, rows]) => [table, rows.length]))

describe.each(fixtures)('the studio that an issue left: %s', (name) => {
	const { folder } = emptyStudio()

	test('comes up to date without losing a row, and its record holds', async () => {
		load(folder(), readFileSync(join(place, name), 'utf8'))
		const before = countsIn(folder())
		start(folder())
		expect(countsIn(folder())).toMatchObject(before)
		expect(await verify(await viewerOf('system'))).toMatchObject({ broken: null, lines: before.event })
	})

	test('is filled: a migration that empties a table would show', () => {
		load(folder(), readFileSync(join(place, name), 'utf8'))
		const empty = Object.entries(countsIn(folder())).filter(([, rows]) => rows === 0)
		expect(empty.map(([table]) => table)).toEqual(['set_up'])
	})
})

describe('how a fixture is made', () => {
	const of = studio()
	const dumped = (folder: string) => stranger(folder, dump)

	test('the text gives back every row and every guard, byte for byte', () => {
		const sql = dumped(of.folder())
		const copy = emptyFolder()
		load(copy, sql)
		expect(rowsIn(copy)).toEqual(rowsIn(of.folder()))
		expect(dumped(copy)).toBe(sql)
		start(copy)
		close()
		expect(dumped(copy)).toBe(sql)
		remove(copy)
	})
})
