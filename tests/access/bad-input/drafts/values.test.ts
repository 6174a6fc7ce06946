import { describe, expect, it } from 'vitest'
import { inParallel } from '../../ask/send'
import { aliveIn, isStored, triedIn } from '../../look/hostile'
import { open } from '../../site/here'
import { snapshot, snapshotAtRest } from '../../site/snapshot'
import { draft, post, refuses, save, things, version } from './desk'
import { kinds } from './kinds'
import { leavesOf, nameOf, nodesOf, type Path, replaced } from './paths'

describe('every value of a draft', () => {
	const leaves = () => leavesOf(draft).filter(({ value, path }) => typeof value === 'string' && nameOf(path) !== 'is')
	const valuesAt = (path: Path) => {
		const kind = kinds[nameOf(path)]
		if (kind === undefined) throw new Error(`${path.join('.')} is of no kind`)
		return { kind, values: triedIn(kind, kind === 'day') }
	}

	it('that is text is of a kind known here, and every kind is tried', () => {
		const named = new Set(leaves().map(({ path }) => nameOf(path)))
		expect(Object.keys(kinds).filter((name) => name !== 'is' && !named.has(name))).toEqual([])
	})

	it('that is text is refused where it is for something else, by name', async () => {
		const before = await snapshotAtRest(open.site.folder)
		const wrong: string[] = []
		const bad = leaves().flatMap(({ path }) => {
			const { kind, values } = valuesAt(path)
			return values.filter((each) => !isStored(kind, each)).map((each) => ({ path, ...each }))
		})
		await inParallel(bad, 4, async ({ path, what, value }) => {
			const at = path.join('.')
			for (const why of await refuses(replaced(draft, path, value.toString()), at)) wrong.push(`${at}, ${what}: ${why}`)
		})
		expect(wrong).toEqual([])
		expect(snapshot(open.site.folder)).toEqual(before)
	}, 120_000)

	it('that is text is kept where it is for words, and shown as text on the desk and in the preview', async () => {
		for (const { path } of leaves()) {
			const { kind, values } = valuesAt(path)
			for (const { what, value } of values.filter((each) => isStored(kind, each))) {
				expect([path, what, (await save(replaced(draft, path, value.toString()))).status]).toEqual([path, what, 200])
				for (const page of ['a script', 'a picture'].includes(what) ? ['', '/preview'] : []) {
					const shown = await open.ask('designer', `/studio/proposal/${things.proposal}${page}`)
					expect([path, page, shown.status, aliveIn(shown.body)]).toEqual([path, page, 200, []])
				}
			}
		}
		expect((await save(draft)).status).toBe(200)
	}, 120_000)

	it('is refused as something of another kind', async () => {
		const before = await snapshotAtRest(open.site.folder)
		const wrong: string[] = []
		await inParallel(leavesOf(draft), 4, async ({ path, value }) => {
			for (const other of [null, 12, true, {}, [], 'yes'].filter((each) => typeof each !== typeof value))
				for (const why of await refuses(replaced(draft, path, other)))
					wrong.push(`${path.join('.')} = ${JSON.stringify(other)}: ${why}`)
		})
		expect(wrong).toEqual([])
		expect(snapshot(open.site.folder)).toEqual(before)
	})

	const objects = () => nodesOf(draft).filter(({ value }) => !Array.isArray(value))

	it('may not be missing', async () => {
		const before = await snapshotAtRest(open.site.folder)
		const wrong: string[] = []
		const less = objects().flatMap(({ path, value }) => Object.keys(value).map((key) => ({ path, value, key })))
		await inParallel(less, 4, async ({ path, value, key }) => {
			const rest = Object.fromEntries(Object.entries(value).filter(([each]) => each !== key))
			for (const why of await refuses(replaced(draft, path, rest)))
				wrong.push(`${path.join('.')} without ${key}: ${why}`)
		})
		expect(wrong).toEqual([])
		expect(snapshot(open.site.folder)).toEqual(before)
	})

	it.each(['more', '__proto__', 'constructor', 'prototype', 'toString', 'toJSON', 'valueOf'])(
		'may have no %s beside it',
		async (key) => {
			const before = await snapshotAtRest(open.site.folder)
			const now = version()
			const wrong: string[] = []
			await inParallel(objects(), 4, async ({ path, value }) => {
				// Written as text: an object of ours would take its prototype from such a key and not send it.
				const more = `${JSON.stringify(value).slice(0, -1)},"${key}":{"is":1}}`
				const text = JSON.stringify(replaced(draft, path, 'HERE')).replace('"HERE"', () => more)
				const said = [
					await post('save', `{"version":${now},"draft":${text}}`),
					await post('price', `{"draft":${text}}`),
				]
				for (const { status } of said) if (status !== 422) wrong.push(`${path.join('.')}: answered ${status}`)
			})
			expect(wrong).toEqual([])
			expect(snapshot(open.site.folder)).toEqual(before)
		},
	)
})
