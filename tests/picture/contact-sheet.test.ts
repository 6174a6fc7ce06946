import { resolve } from 'node:path'
import { expect, test } from 'vitest'
import { shapes } from '@/lib/container/card'
import { wallKinds } from '@/lib/container/site'
import { quarters } from '@/lib/season/season'
import { makeSheet } from './make-sheet'

test('the contact sheet shows at least 48 combinations of season, shape, palette, wall and hour', () => {
	const { page, shots } = makeSheet()
	process.stdout.write(`contact sheet: ${resolve(page)}\n`)
	expect(new Set(shots.map(({ svg }) => svg)).size).toBeGreaterThanOrEqual(48)
	const names = shots.map(({ name }) => name).join()
	for (const each of [...quarters, ...shapes, ...wallKinds, 'day', 'evening']) expect(names).toContain(each)
}, 60_000)
