import { linkIn } from '../../site/mailbox'
import { expect, laptop, phone, test } from '../../site/story'

const browser =
	'Mozilla/5.0 (Windows NT 10.0; Win64; x64) AppleWebKit/537.36 (KHTML, like Gecko) Chrome/141.0.0.0 Safari/537.36'

test('a mail scanner opens the link before the person does, and the person still signs in', async ({
	visit,
	cast,
	mailbox,
}) => {
	const { address } = cast.people.fieldstoneApprover
	const person = await visit(phone)
	await person.goto('/sign-in')
	await person.getByLabel('Mail address').fill(address)
	await person.getByRole('button', { name: 'Send me the link' }).click()
	const link = linkIn(await mailbox.next(address, /link to sign in/))

	const scanner = await visit({ ...laptop, userAgent: browser })
	await scanner.goto('/sign-in')
	const { request } = scanner.context()
	const callback = link.replace('/sign-in/confirm', '/api/auth/callback/email')
	for (const target of [link, callback]) {
		expect((await request.get(target)).status()).toBe(200)
		expect((await request.head(target)).status()).toBe(200)
		await scanner.goto(target, { waitUntil: 'networkidle' })
		await expect(scanner.getByRole('heading', { name: 'Is this you?' })).toBeVisible()
	}
	await expect(scanner.getByText(/asked for in another browser or on another device/)).toBeVisible()
	expect((await scanner.context().cookies()).map(({ name }) => name)).toEqual([])

	await person.goto(link)
	await expect(person.getByText(address)).toBeVisible()
	await expect(person.getByText(/asked for in another browser/)).toHaveCount(0)
	await person.getByRole('button', { name: 'Sign in' }).click()
	await expect(person.getByRole('heading', { name: cast.clients.fieldstone.name })).toBeVisible()

	await scanner.goto(link)
	await expect(scanner.getByRole('heading', { name: 'That link is over' })).toBeVisible()
	await person.goto(link)
	await expect(person.getByRole('heading', { name: 'That link is over' })).toBeVisible()
	await expect(person.getByText(`It goes to ${address}.`)).toBeVisible()
	await person.getByRole('button', { name: 'Send me a fresh link' }).click()
	await expect(person.getByText(address)).toBeVisible()
	await person.goto(linkIn(await mailbox.next(address, /link to sign in/, 1)))
	await person.getByRole('button', { name: 'Sign in' }).click()
	await expect(person.getByRole('heading', { name: cast.clients.fieldstone.name })).toBeVisible()
})
