import { describe, expect, it } from 'vitest'
import { type Fields, multipart } from '../ask/forms'
import { placeOf } from '../ask/outcome'
import { aliveIn, triedIn } from '../look/hostile'
import { open } from '../site/here'
import { snapshot, snapshotAtRest } from '../site/snapshot'

describe('what the doors of the public take', () => {
	const backToAsking = /^\/sign-in\?to=[^&]*&form=[0-9a-f-]{36}$/
	const alive = async (path: string) => aliveIn((await open.ask('signed out', path)).body)
	const post = (path: string, fields: Fields) => open.ask('signed out', path, { method: 'POST', ...multipart(fields) })

	it.each(triedIn('address'))('an address that is $what', async ({ value }) => {
		const before = await snapshotAtRest(open.site.folder)
		for (const field of ['address', 'handle']) {
			const answer = await post('/sign-in/ask', [
				[field, value],
				['to', value],
			])
			expect([field, answer.status, backToAsking.test(placeOf(answer))]).toEqual([field, 303, true])
			expect(await alive(placeOf(answer))).toEqual([])
		}
		expect(snapshot(open.site.folder)).toEqual(before)
	})

	it.each([
		'a@x.example,b@y.example',
		'"a@x.example"@elsewhere.example',
		'a@@x.example',
		'a@x.example\r\nBcc: b@y.example',
		'a b@x.example',
		'<a@x.example>',
		'a@x',
		`${'a'.repeat(250)}@x.example`,
		'a@[127.0.0.1]',
	])('no mail address: %j', async (address) => {
		const before = await snapshotAtRest(open.site.folder)
		expect(placeOf(await post('/sign-in/ask', [['address', address]]))).toMatch(backToAsking)
		expect(snapshot(open.site.folder)).toEqual(before)
	})

	it.each(triedIn('number'))('a code, a cookie, a link that is $what', async ({ value }) => {
		const before = await snapshotAtRest(open.site.folder)
		const cookie = `doorsill-ask=${encodeURIComponent(JSON.stringify({ ask: value.toString(), address: value.toString(), handle: '', to: '//e.example' }).slice(0, 3000))}`
		const { body, headers } = multipart([['code', value]])
		const code = await open.ask('signed out', '/sign-in/code', {
			method: 'POST',
			body,
			headers: { ...headers, cookie },
		})
		expect(code.status).toBe(303)
		for (const path of ['/sign-in/sent', '/sign-in/over']) {
			const page = await open.ask('signed out', path, { headers: { cookie } })
			expect([page.status < 500, aliveIn(page.body)]).toEqual([true, []])
		}
		const query = new URLSearchParams({
			token: value.toString(),
			callbackUrl: value.toString(),
			for: value.toString(),
			to: value.toString(),
		})
		for (const path of ['/sign-in/confirm', '/sign-in', '/set-up', '/api/auth/callback/email']) {
			const page = await open.ask('signed out', `${path}?${query}`)
			expect([path, page.status < 500 || page.status === 431, aliveIn(page.body)]).toEqual([path, true, []])
		}
		expect(snapshot(open.site.folder)).toEqual(before)
	})

	it.each(triedIn('words'))('a session to end, a browser’s name, words to look for: $what', async ({ value }) => {
		const before = await snapshotAtRest(open.site.folder)
		const { body, headers } = multipart([['session', value]])
		expect((await open.ask('approver', '/devices/end', { method: 'POST', body, headers })).status).toBe(404)
		const query = new URLSearchParams({ q: value.toString(), ended: value.toString(), for: value.toString() })
		for (const [person, path] of [
			['approver', '/devices'],
			['designer', '/studio/clients'],
		] as const) {
			const page = await open.ask(person, `${path}?${query}`)
			expect([path, page.status === 200 || page.status === 431, aliveIn(page.body)]).toEqual([path, true, []])
		}
		expect(snapshot(open.site.folder)).toEqual(before)
	})
})
