import { existsSync, readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, test, vi } from 'vitest'
import { closeSideFile } from '@/db/house/side-file'
import { later, stranger, studio } from '../../db/stage/studio'
import { anew } from '../anew'

// The mark of a bundler that has no server side: there is no bundler here.
vi.mock('server-only', () => ({}))

const of = studio()
const hour = 3_600_000
const logFile = () => join(of.folder(), 'site.log')
const copies = () => {
	const folder = join(of.folder(), 'backup')
	const names = existsSync(folder) ? readdirSync(folder).toSorted() : []
	return names.filter((name) => name.endsWith('.db'))
}

const keep = (ms = 0) =>
	anew(later(of.cast().now, ms), { DATA_DIR: of.folder(), LOG_FILE: logFile() }, async () => {
		const { keepHouse } = await import('@/app/server/start/housekeeping')
		await keepHouse()
	})

describe('the house is kept', () => {
	test('with a copy at once, and the next when that is twenty hours old', async () => {
		await keep()
		expect(copies()).toHaveLength(1)
		await keep(19 * hour)
		expect(copies()).toHaveLength(1)
		await keep(21 * hour)
		expect(copies()).toHaveLength(2)
	})

	test.each([
		['the side file is gone', () => closeSideFile()],
		[
			'the log of mails cannot be written',
			() =>
				stranger(of.folder(), (sqlite) =>
					sqlite.exec("CREATE TRIGGER full BEFORE INSERT ON event BEGIN SELECT RAISE(ABORT, 'the disk is full'); END"),
				),
		],
	])('with a copy and all the other steps, when %s', async (_, harm) => {
		harm()
		await keep(30 * 24 * hour)
		expect(copies()).toHaveLength(1)
		const log = readFileSync(logFile(), 'utf8')
		expect(log.match(/"act":"housekeeping failed"/g)).toHaveLength(1)
		expect(log).toContain('"act":"kept house"')
	})
})
