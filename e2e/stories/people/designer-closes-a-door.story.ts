import { expect, laptop, test } from '../../site/story'

test('a designer closes the door to a contact, after reading what that means', async ({ as, cast }) => {
	const { bakeryViewer: pia, bakeryApprover: maud } = cast.people
	const theirs = await as('bakeryViewer', laptop)
	const page = await as('designer', laptop)
	await page.goto(`/studio/clients/${cast.clients.bakery.id}`)
	const contacts = page.getByRole('region', { name: 'Contacts' })
	const close = contacts.getByRole('button', { name: `Close the door to ${pia.name}` })
	await expect(close).toBeHidden()
	await contacts.getByText(`Close the door… to ${pia.name}`).click()
	await expect(contacts.getByText(`${pia.name} is signed out at once`)).toBeVisible()
	await close.click()
	await expect(contacts.getByRole('status')).toHaveText(`${pia.name} can no longer come in.`)
	await expect(contacts.getByRole('listitem').filter({ hasText: pia.address })).toHaveCount(0)
	await expect(contacts.getByRole('listitem').filter({ hasText: maud.address })).toHaveCount(1)
	await theirs.goto(`/proposal/${cast.proposals.bakery}`)
	await expect(theirs).toHaveURL(/\/sign-in\?/)
})
