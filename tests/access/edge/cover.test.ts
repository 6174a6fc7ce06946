import { describe, expect, it } from 'vitest'
import { freshSender, send } from '../ask/send'
import { open } from '../site/here'
import { record } from '../site/snapshot'
import { things } from './bakery'

const keyOf = (proposal: string) =>
	record(open.site.folder, (db) =>
		String(db.prepare('SELECT card_key FROM proposal WHERE id = ?').pluck().get(proposal)),
	)
const from = (sender: string) => ({ headers: { 'x-forwarded-for': sender } })
const meta = (page: string, property: string) =>
	new RegExp(`<meta property="${property}" content="([^"]*)"`).exec(page)?.[1]

describe('the cover of a link', () => {
	it('is a picture for whoever holds its key, in which nothing can run', async () => {
		const said = await open.ask('signed out', `/cover/${keyOf(things.proposal)}.png`)
		expect([said.status, said.headers['content-type'], said.headers['content-security-policy']]).toEqual([
			...[200, 'image/png', "default-src 'none'"],
		])
		expect(said.headers['cache-control']).toBe('public, max-age=3600')
		expect(said.headers['cross-origin-resource-policy']).toBe('cross-origin')
	})

	it.each([
		['another key', () => `${'0'.repeat(32)}.png`],
		['the id of the proposal', () => `${things.proposal}.png`],
		['the beginning of a key', () => `${keyOf(things.proposal).slice(0, 31)}.png`],
		['another ending', () => `${keyOf(things.proposal)}.svg`],
		['capitals', () => `${keyOf(things.proposal).toUpperCase()}.png`],
		['nothing of it', () => '.png'],
	])('is not there for %s', async (_, name) => {
		expect((await open.ask('signed out', `/cover/${name()}`)).status).toBe(404)
	})

	it('leads whoever opens the link to the way in, which names it and nothing of the client', async () => {
		const key = keyOf(things.proposal)
		const link = await send(open.site.url, `/proposal/${things.proposal}?cover=${key}`)
		const page = await send(open.site.url, String(link.headers.location).replace(open.site.url, ''))
		expect(meta(page.body, 'og:image')).toBe(`${open.site.url}/cover/${key}.png`)
		for (const { name } of [open.site.cast.clients.bakery, ...Object.values(open.site.cast.people)])
			expect(page.body).not.toContain(name)
	})

	it.each(['', 'f', `${'0'.repeat(32)}"><script>`, '../../icon', ['a', 'b']])(
		'is not named by the way in for %j',
		async (cover) => {
			const query = new URLSearchParams([['to', '/'], ...[cover].flat().map((one) => ['cover', one])])
			const page = await send(open.site.url, `/sign-in?${query}`)
			expect([page.status, meta(page.body, 'og:image')]).toEqual([200, undefined])
		},
	)

	it('says no more of a proposal that is there than of none', async () => {
		const bare = async (proposal: string) => {
			const said = await send(open.site.url, `/proposal/${proposal}`)
			return [said.status, String(said.headers.location).replace(proposal, '')]
		}
		expect(await bare(things.proposal)).toEqual(await bare('01999999-0000-7000-8000-00000000000a'))
	})

	it('is not drawn for one sender more often than a hundred and twenty times a minute', async () => {
		const [sender, path] = [freshSender(), `/cover/${'0'.repeat(32)}.png`]
		const said = []
		for (let turn = 0; turn <= 120; turn++) said.push(await send(open.site.url, path, from(sender)))
		expect(said.map(({ status }) => status)).toEqual([...Array.from({ length: 120 }, () => 404), 429])
		expect(said.at(-1)?.headers['retry-after']).toMatch(/^\d+$/)
	})
})
