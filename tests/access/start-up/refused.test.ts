import { existsSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { freePort } from '@/e2e/site/server'
import { nextStart } from '../site/run'
import { bad } from './bad'
import { copyOf, folder, studio } from './folders'

describe('a start that would go wrong', () => {
	it.each(bad)('$what: one clear line and out', async ({ of, env, says }) => {
		const data = copyOf(of)
		const before = existsSync(join(data, 'studio.db'))
		const port = await freePort()
		const { code, said, stop } = nextStart(port, { DATA_DIR: data, LOG_FILE: join(folder, 'bad.log'), ...env })
		const late = setTimeout(() => void stop(), 30_000)
		expect(await code).toBe(1)
		clearTimeout(late)
		const lines = said()
			.split('\n')
			.filter((line) => line.includes('Doorsill did not start'))
		expect([lines.length, lines[0]]).toEqual([1, expect.stringMatching(says)])
		expect(said()).not.toMatch(/\n\s+at |unhandled|uncaught/i)
		if (of === 'empty') expect(existsSync(join(data, 'studio.db'))).toBe(before)
	})
})

describe('a port that is none', () => {
	it('is refused by the framework before anything of ours runs, in one line', async () => {
		const { code, said } = nextStart(undefined, { DATA_DIR: copyOf('studio'), SITE_URL: studio, PORT: 'three' })
		expect(await code).toBe(1)
		expect(said()).toMatch(/^error: .*PORT.* is invalid.*\n$/)
	})
})
