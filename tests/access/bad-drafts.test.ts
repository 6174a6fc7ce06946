import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { json } from './ask/forms'
import { type Answer, inParallel } from './ask/send'
import { aliveIn, isStored, type Kind, triedIn } from './look/hostile'
import { type OpenSite, openSite } from './site/open'
import { record, snapshot } from './site/snapshot'
import { draftOf, type Things, thingsOf } from './site/things'

let open: OpenSite
let things: Things
let draft: ReturnType<typeof draftOf>
let tries = 0

beforeAll(async () => {
	open = await openSite()
	things = thingsOf(open.site.folder, open.site.cast, 'clapboard')
	const kept = draftOf(open.site.folder, things.proposal)
	draft = { ...kept, agreement: { is: 'fixed', cents: '640.00', containers: [things.container] } }
})

afterAll(async () => {
	process.stdout.write(`bad input in drafts: ${tries} tried\n`)
	await open.close()
})

type Path = readonly (string | number)[]

/** Every value in a draft that is no list and no object, with the way to it; of a list, what is first in it. */
function leavesOf(value: unknown, path: Path = []): { path: Path; value: unknown }[] {
	if (Array.isArray(value)) return value.length === 0 ? [] : leavesOf(value[0], [...path, 0])
	if (typeof value === 'object' && value !== null)
		return Object.entries(value).flatMap(([key, inner]) => leavesOf(inner, [...path, key]))
	return [{ path, value }]
}

/** Every list and object in a draft, itself too. */
function nodesOf(value: unknown, path: Path = []): { path: Path; value: object }[] {
	if (typeof value !== 'object' || value === null) return []
	const inner: [string | number, unknown][] = Array.isArray(value) ? [[0, value[0]]] : Object.entries(value)
	return [{ path, value }, ...inner.flatMap(([key, each]) => nodesOf(each, [...path, key]))]
}

/** A copy with something else at the end of a path. */
function replaced(value: unknown, [key, ...rest]: Path, by: unknown): unknown {
	if (key === undefined) return by
	if (Array.isArray(value)) return value.map((each, index) => (index === key ? replaced(each, rest, by) : each))
	if (typeof value !== 'object' || value === null) throw new Error(`replaced: nothing at ${key}`)
	return Object.fromEntries(
		Object.entries(value).map(([name, each]) => [name, name === key ? replaced(each, rest, by) : each]),
	)
}

const kinds: Readonly<Record<string, Kind>> = {
	title: 'words',
	letter: 'lines',
	name: 'words',
	echoes: 'words',
	words: 'words',
	hex: 'hex',
	key: 'key',
	container: 'id',
	containers: 'id',
	id: 'id',
	material: 'id',
	place: 'id',
	role: 'choice',
	holding: 'choice',
	design: 'choice',
	is: 'choice',
	count: 'number',
	minutes: 'number',
	supplementCents: 'money',
	cents: 'money',
	from: 'day',
	to: 'day',
	answerBy: 'day',
}

const nameOf = (path: Path) => String(path.findLast((step) => typeof step === 'string'))
const version = () =>
	record(open.site.folder, (db) =>
		Number(db.prepare('SELECT version FROM draft WHERE proposal_id = ?').pluck().get(things.proposal)),
	)

const post = (where: 'save' | 'price', body: unknown): Promise<Answer> => {
	tries += 1
	return open.ask('designer', `/studio/proposal/${things.proposal}/${where}`, { method: 'POST', ...json(body) })
}
const save = (next: unknown) => post('save', { version: version(), draft: next })

/** Refused by both, by name, with nothing kept. */
async function refuses(next: unknown, at?: string): Promise<string[]> {
	const wrong: string[] = []
	for (const answer of [await save(next), await post('price', { draft: next })]) {
		if (answer.status !== 422) wrong.push(`answered ${answer.status}: ${answer.body.slice(0, 80)}`)
		else if (at !== undefined && !answer.body.includes(`"${at}`))
			wrong.push(`does not name ${at}: ${answer.body.slice(0, 120)}`)
		if (aliveIn(answer.body).length > 0 && !String(answer.headers['content-type']).startsWith('application/json'))
			wrong.push('alive')
	}
	return wrong
}

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
		const before = snapshot(open.site.folder)
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
		const before = snapshot(open.site.folder)
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
		const before = snapshot(open.site.folder)
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
			const before = snapshot(open.site.folder)
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

describe('a draft as a whole', () => {
	const unchanged = async (act: () => Promise<void>) => {
		const before = snapshot(open.site.folder)
		await act()
		expect(snapshot(open.site.folder)).toEqual(before)
	}
	const [option] = [() => draft.options[0]]
	const lines = (count: number) => Array.from({ length: count }, () => option()?.pots[0]?.lines[0])

	it.each([
		['61 lines', () => replaced(draft, ['options', 0, 'pots', 0, 'lines'], lines(61))],
		['2,500 lines', () => replaced(draft, ['options', 0, 'pots', 0, 'lines'], lines(2500))],
		[
			'61 pots',
			() =>
				replaced(
					draft,
					['options', 0, 'pots'],
					Array.from({ length: 61 }, () => option()?.pots[0]),
				),
		],
		[
			'nine colours',
			() =>
				replaced(
					draft,
					['options', 0, 'palette'],
					Array.from({ length: 9 }, () => option()?.palette[0]),
				),
		],
		['five palettes', () => ({ ...draft, options: Array.from({ length: 5 }, () => option()) })],
		['21 extras', () => ({ ...draft, extras: Array.from({ length: 21 }, () => draft.extras[0]) })],
		['61 containers', () => ({ ...draft, containers: Array.from({ length: 61 }, () => draft.containers[0]) })],
		['another version of the form', () => ({ ...draft, v: 2 })],
	])('%s', async (_, made) => {
		await unchanged(async () => expect(await refuses(made())).toEqual([]))
	})

	it('10,000 lines are more than a draft can hold', async () => {
		await unchanged(async () => {
			const body = { version: version(), draft: replaced(draft, ['options', 0, 'pots', 0, 'lines'], lines(10_000)) }
			expect((await post('save', body)).status).toBe(413)
		})
	})

	it.each([
		['nothing', ''],
		['half of it', '{"version":1,"draft":{'],
		['no JSON', '<draft/>'],
		['a number', '7'],
		['null', 'null'],
		['a list', '[]'],
		['a word', '"draft"'],
		['lists in lists in lists', '['.repeat(190_000)],
		['lists in lists, closed', `{"version":1,"draft":${'['.repeat(90_000)}${']'.repeat(90_000)}}`],
		['things in things', `{"version":1,"draft":${'{"a":'.repeat(40_000)}1${'}'.repeat(40_000)}}`],
		['a number without end', `{"version":${'9'.repeat(100_000)},"draft":{}}`],
		['the same key often', `{${'"version":1,'.repeat(20_000)}"draft":{}}`],
		['a byte order mark', '\ufeff{"version":1,"draft":{}}'],
		['half a sign', '{"version":1,"draft":{"title":"\\ud800"}}'],
	])('%s', async (_, body) => {
		await unchanged(async () => {
			expect((await post('save', body)).status).toBe(422)
			expect((await post('price', body)).status).toBe(422)
		})
	})

	it('with half a sign in its words', async () => {
		await unchanged(async () => {
			for (const half of ['\\ud800', 'a\\udc00b', '\\ud83c']) {
				const text = JSON.stringify({ version: version(), draft: { ...draft, title: 'HERE' } }).replace('HERE', half)
				expect((await post('save', text)).status).toBe(422)
			}
		})
	})

	it('with another version than the one that stands is handed what stands', async () => {
		await unchanged(async () => {
			for (const other of [version() - 1, version() + 1]) {
				const answer = await post('save', { version: other, draft })
				expect([answer.status, JSON.parse(answer.body).version]).toEqual([409, version()])
			}
			for (const none of [0, -1, 1.5, '1', null, Number.MAX_SAFE_INTEGER + 2])
				expect((await post('save', { version: none, draft })).status).toBe(422)
		})
	})

	it('that two windows save at the same moment is kept once', async () => {
		const now = version()
		const answers = await Promise.all([1, 2, 3, 4].map(() => post('save', { version: now, draft })))
		expect(answers.map(({ status }) => status).toSorted()).toEqual([200, 409, 409, 409])
		expect(version()).toBe(now + 1)
	})

	it('that names what is another client’s or nobody’s is kept, priced without it, and cannot be published', async () => {
		const theirs = thingsOf(open.site.folder, open.site.cast, 'stucco')
		const [first] = draft.containers
		for (const [id, says] of [[theirs.container, 'A container is not this client’s.']] as const) {
			const next = { ...draft, containers: [...draft.containers, { ...first, id }] }
			expect((await post('price', { draft: next })).body).toContain(says)
			expect((await post('price', { draft: next })).body).not.toContain('Merrowin')
		}
		const stranger = replaced(
			draft,
			['options', 0, 'pots', 0, 'lines', 0, 'material'],
			'01900000-0000-7000-8000-000000000000',
		)
		expect((await post('price', { draft: stranger })).body).toContain('a material that is not in the catalogue')
	})

	it('with one key for two palettes, or for two extras, is refused', async () => {
		await unchanged(async () => {
			const [a] = draft.options
			expect(await refuses({ ...draft, options: [a, { ...a, name: 'The same again' }] })).toEqual([])
			const [extra] = draft.extras
			expect(await refuses({ ...draft, extras: [extra, { ...extra, name: 'The same again' }] })).toEqual([])
		})
	})

	it('still opens afterwards', async () => {
		for (const page of ['', '/preview'])
			expect((await open.ask('designer', `/studio/proposal/${things.proposal}${page}`)).status).toBe(200)
	})
})
