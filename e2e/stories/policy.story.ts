import { clientPages } from '../site/pages/client'
import { studioPages } from '../site/pages/studio'
import { visitEach, walkIn } from '../site/pages/visit'
import { expect, laptop, phone, test } from '../site/story'

const strict = /default-src 'none'; script-src 'nonce-[\w+/=]{20,}' 'strict-dynamic'; style-src 'self' 'nonce-/

// What a page does against its policy, or asks of another host, fails the story by itself: see site/watch.ts.
for (const [whose, pages] of [
	['client’s', clientPages],
	['studio’s', studioPages],
] as const)
	test(`each of the ${whose} pages keeps to its policy and asks nothing of another host`, async ({ as, papered }) => {
		test.slow()
		await visitEach({ as, cast: papered }, pages, laptop, async (_, name, answer) => {
			expect.soft(answer?.headers()['content-security-policy'], name).toMatch(strict)
		})
	})

test('the way in keeps to its policy and asks nothing of another host', async ({ visit, cast, mailbox }) => {
	const guest = await visit(phone)
	await walkIn(guest, mailbox, cast.people.vetApprover.address, () => guest.waitForLoadState('networkidle'))
})

test('what was smuggled into a page does nothing, and is noticed', async ({ as, cast, wrong }) => {
	const page = await as('bakeryApprover', laptop)
	await page.goto(`/proposal/${cast.proposals.bakery}`)
	const refusals = (directive: string) => wrong.filter((each) => each.includes(`policy: ${directive} refused`)).length
	await page.evaluate(async () => {
		const smuggled = [
			'<img alt="" src="/icon.svg" onload="document.title = \'taken over\'">',
			'<img alt="" src="https://elsewhere.example/pixel.png">',
			'<p style="position: fixed; inset: 0">Pay here</p>',
			'<form id="smuggled" action="https://elsewhere.example/pay" method="post"></form>',
		]
		document.body.insertAdjacentHTML('beforeend', smuggled.join(''))
		await fetch('https://elsewhere.example/tell').catch(() => undefined)
	})
	for (const directive of ['script-src-attr', 'img-src', 'style-src-attr', 'connect-src'])
		await expect.poll(() => refusals(directive), directive).toBe(1)
	expect(wrong).toContain('request: https://elsewhere.example/pixel.png')
	await expect(page).toHaveTitle(/^Your design/)

	await page.evaluate(() => document.querySelector<HTMLFormElement>('#smuggled')?.submit())
	await expect.poll(() => refusals('form-action')).toBe(1)
	wrong.length = 0
})
