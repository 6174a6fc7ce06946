import { issuedTo } from '../../site/agreement'
import { barriers, overflow } from '../../site/barriers'
import { expect, laptop, phone, test } from '../../site/story'

for (const [where, device] of [
	['a phone', phone],
	['a laptop', laptop],
] as const)
	test(`axe finds no barrier on the way to a signature on ${where}, by day and at dusk`, async ({ site, cast, as }) => {
		test.slow()
		const id = await issuedTo(site, 'vet')
		const page = await as('vetApprover', device)
		const look = async (name: string) => {
			await expect(page.getByRole('heading', { level: 1 })).toHaveCount(1)
			for (const colorScheme of ['light', 'dark'] as const) {
				await page.emulateMedia({ colorScheme })
				expect.soft(await barriers(page), `${name}, ${colorScheme}`).toEqual([])
			}
			expect.soft((await overflow(page)).px, name).toBe(0)
		}
		await page.goto(`/home/${cast.clients.vet.id}`)
		await look('home')
		for (const path of ['', '/decline', '/consent']) {
			await page.goto(`/agreement/${id}${path}`)
			await look(`agreement${path}`)
		}
		await page.getByRole('button', { name: 'Agree and go on' }).click()
		await expect(page.getByRole('alert', { name: 'One thing needs another look' })).toBeVisible()
		await look('consent, not ticked')
		await page.getByRole('checkbox').check()
		await page.getByRole('button', { name: 'Agree and go on' }).click()
		await page.getByLabel('Your name').fill('Rowan Kittiwell')
		await page.getByText('Draw it as well, if you like').click()
		await look('sign')
		await page.getByRole('button', { name: 'Sign the agreement' }).click()
		await expect(page.getByRole('heading', { level: 1, name: 'Signed. Thank you.' })).toBeVisible()
		await look('done')
		await page.goto('/verify?hash=none')
		await look('verify')
	})
