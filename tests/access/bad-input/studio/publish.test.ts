import { v7 } from 'uuid'
import { describe, expect, it } from 'vitest'
import { type Fields, urlencoded } from '../../ask/forms'
import { placeOf } from '../../ask/outcome'
import { tally } from '../../ask/tally'
import { aliveIn, hostile } from '../../look/hostile'
import { open } from '../../site/here'
import { count, record, snapshot, snapshotAtRest } from '../../site/snapshot'

const tried = tally((tries) => `bad input in publishing many: ${tries} tried`)

const path = (season: string = open.site.cast.seasons.winter) => `/studio/season/${season}/publish`

function send(fields: Fields, season?: string) {
	tried()
	return open.ask('designer', `${path(season)}/send`, { method: 'POST', ...urlencoded(fields) })
}

/** Nothing is changed; what the page says to it comes back. */
async function told(picks: readonly (string | Buffer)[], once: Fields = [['once', v7()]]): Promise<string> {
	const before = await snapshotAtRest(open.site.folder)
	const answer = await send([...once, ...picks.map((pick) => ['pick', pick] as const)])
	expect(answer.status).toBe(303)
	expect(snapshot(open.site.folder)).toEqual(before)
	const page = await open.ask('designer', placeOf(answer))
	expect([page.status, aliveIn(page.body)]).toEqual([200, []])
	return page.body
}

const draft = (key: 'bicycles' | 'bookshop' | 'bakery' | 'skipped', version?: number) => {
	const id = open.site.cast.proposals[key]
	const stands = record(open.site.folder, (db) =>
		db.prepare('SELECT version FROM draft WHERE proposal_id = ?').pluck().get(id),
	)
	return `${id}.${version ?? String(stands)}`
}

describe('publishing many, sent as no page sends it', () => {
	it('none ticked', async () => {
		expect(await told([])).toContain('Tick the drafts that are to be published.')
	})

	it('more than may be published at once', async () => {
		const many = Array.from({ length: 501 }, () => `${v7()}.1`)
		expect(await told(many)).toContain('Publish at most 500 at once.')
	})

	it('five hundred that are not there, each told so', async () => {
		const body = await told(Array.from({ length: 500 }, () => `${v7()}.1`))
		expect(body).toContain('None was published')
		expect(body).toContain('There is no such proposal in this season.')
	})

	it('what is none', async () => {
		const texts = hostile.map(({ value }) => value)
		for (const value of [...texts, '', v7(), `${v7()}.`, `${v7()}.-1`, `${v7()}.1e3`, `${'x'.repeat(36)}.1`])
			expect(await told([value])).toContain('role="alert"')
	})

	it('a proposal of another season', async () => {
		const autumn = record(open.site.folder, (db) =>
			db.prepare('SELECT id FROM proposal WHERE season_id = ? LIMIT 1').pluck().get(open.site.cast.seasons.autumn),
		)
		expect(await told([`${String(autumn)}.1`])).toContain('There is no such proposal in this season.')
	})

	it('one that waits for the client, one that was skipped', async () => {
		const body = await told([draft('bakery'), draft('skipped')])
		expect(body).toContain('It no longer waits for you')
	})

	it('a version that was saved over', async () => {
		expect(await told([draft('bicycles', 998), draft('bookshop', 999)])).toContain('It was saved in another window')
	})

	it('without a key, or with a field more', async () => {
		expect(await told([draft('bicycles')], [])).toContain('role="alert"')
		expect(await told([draft('bicycles')], [['once', 'none']])).toContain('role="alert"')
		const more = [
			['once', v7()],
			['priceCents', '1'],
		] as const
		expect(await told([draft('bicycles')], more)).toContain('role="alert"')
	})

	it('a season that is not there', async () => {
		for (const season of [v7(), 'not-a-uuid'])
			expect(
				(
					await send(
						[
							['once', v7()],
							['pick', draft('bicycles')],
						],
						season,
					)
				).status,
			).toBe(404)
	})

	it('as data, what cannot be read is told as data', async () => {
		const answer = await open.ask('designer', `${path()}/send`, {
			method: 'POST',
			...urlencoded([['once', v7()]]),
			headers: { ...urlencoded([]).headers, accept: 'application/json' },
		})
		expect([answer.status, JSON.parse(answer.body)]).toEqual([
			422,
			{ errors: { pick: 'Tick the drafts that are to be published.' } },
		])
	})
})

describe('publishing many, twice', () => {
	it('publishes each once, and says of the second that it was there', async () => {
		const form: Fields = [
			['once', v7()],
			['pick', draft('bicycles')],
			['pick', draft('bookshop')],
			['pick', `${v7()}.1`],
		]
		const before = count(open.site.folder, 'revision')
		const first = await open.ask('designer', placeOf(await send(form)))
		expect(first.body).toContain('Two published, one not')
		expect(count(open.site.folder, 'revision')).toBe(before + 2)
		const after = await snapshotAtRest(open.site.folder)
		const second = await open.ask('designer', placeOf(await send(form)))
		expect(second.body).toContain('None was published')
		expect(snapshot(open.site.folder)).toEqual(after)
	})
})

describe('a season page asked for what cannot be meant', () => {
	it.each(hostile.map(({ what, value }) => [what, value] as const))('%s', async (_, value) => {
		const text = encodeURIComponent(value.toString())
		for (const name of [
			'show',
			'kind',
			'palette',
			'name',
			'sort',
			'page',
			'all',
			'told',
			'again',
			'reminded',
			'form',
		]) {
			const page = await open.ask('designer', `/studio/season/${open.site.cast.seasons.winter}?${name}=${text}`)
			expect([name, page.status, aliveIn(page.body)]).toEqual([name, 200, []])
		}
	})
})
