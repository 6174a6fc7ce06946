import { linkIn } from '../../site/mailbox'
import { signInBy } from '../../site/session'
import { expect, laptop, phone, test } from '../../site/story'

const onPhone = 'Mozilla/5.0 (Android 14; Mobile; rv:133.0) Gecko/133.0 Firefox/133.0'
const atTill =
	'Mozilla/5.0 (Windows NT 10.0; Win64; x64) AppleWebKit/537.36 (KHTML, like Gecko) Chrome/131.0.0.0 Safari/537.36 Edg/131.0.0.0'

test('a contact hears of another browser, ends it, and signs out everywhere', async ({ visit, cast, mailbox }) => {
	const { address } = cast.people.dentalApprover
	const mine = await visit({ ...phone, userAgent: onPhone })
	await signInBy(mine, mailbox, address)
	const other = await visit({ ...laptop, userAgent: atTill })
	await signInBy(other, mailbox, address, 1)

	const told = await mailbox.next(address, /^You signed in with another browser$/)
	expect(told.text).toContain('Edge on Windows')
	await mine.goto(linkIn(told))
	await expect(mine.getByRole('heading', { name: 'Where you are signed in' })).toBeVisible()
	const lines = mine.getByRole('main').getByRole('listitem')
	await expect(lines).toHaveCount(2)
	await expect(lines.first()).toContainText('Firefox on Android, the one before you')
	await lines
		.filter({ hasText: 'Edge on Windows' })
		.getByRole('button', { name: /^End it/ })
		.click()
	await expect(mine.getByRole('status')).toHaveText('Ended. Whoever uses that browser has to sign in again.')
	await expect(lines).toHaveCount(1)
	await other.reload()
	await expect(other).toHaveURL(/\/sign-in/)

	await signInBy(other, mailbox, address, 2)
	await other.getByRole('link', { name: 'Where you are signed in' }).click()
	await other.getByRole('button', { name: 'Sign out everywhere' }).click()
	await expect(other.getByRole('heading', { name: 'Sign in' })).toBeVisible()
	expect((await other.context().cookies()).map(({ name }) => name)).toEqual([])
	await mine.reload()
	await expect(mine).toHaveURL(/\/sign-in/)
	expect(mailbox.mails.filter(({ to, subject }) => to === address && /another browser/.test(subject))).toHaveLength(1)

	await signInBy(mine, mailbox, address, 3)
	await mailbox.next(address, /^You signed in with another browser$/, 1)
})

test('the designer and the helper see where they are signed in, each their own', async ({ as }) => {
	for (const who of ['designer', 'helper'] as const) {
		const page = await as(who, laptop)
		await page.goto('/')
		await page.getByRole('link', { name: 'Where you are signed in' }).click()
		await expect(page.getByRole('main').getByRole('listitem')).toHaveCount(1)
		await page.getByRole('main').getByRole('button', { name: 'Sign out here' }).click()
		await expect(page.getByRole('heading', { name: 'Sign in' })).toBeVisible()
	}
})
