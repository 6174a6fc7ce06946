import { linkIn } from '../../site/mailbox'
import { signInBy } from '../../site/session'
import { expect, laptop, phone, test } from '../../site/story'

test('a designer changes a contact’s address: they are out, the old one is told, the new one signs in', async ({
	as,
	cast,
	mailbox,
	visit,
}) => {
	const { bakeryApprover: maud, bakeryViewer: pia } = cast.people
	const fresh = 'maud@quayrow.example'
	const theirs = await as('bakeryApprover', phone)
	await theirs.goto(`/home/${cast.clients.bakery.id}`)
	await expect(theirs.getByRole('heading', { name: cast.clients.bakery.name })).toBeVisible()

	const page = await as('designer', laptop)
	await page.goto(`/studio/clients/${cast.clients.bakery.id}`)
	const contacts = page.getByRole('region', { name: 'Contacts' })
	await contacts.getByText(`Change the address… of ${maud.name}`).click()
	const box = contacts.getByLabel(`New mail address of ${maud.name}`)
	await box.fill(pia.address)
	await contacts.getByRole('button', { name: 'Change the address' }).filter({ visible: true }).click()
	await expect(contacts.getByRole('alert')).toContainText(`This is the address of ${pia.name}, a contact here already`)
	await expect(box).toHaveValue(pia.address)
	await box.fill(fresh)
	await contacts.getByRole('button', { name: 'Change the address' }).filter({ visible: true }).click()
	await expect(contacts.getByRole('status')).toHaveText(
		`${maud.name} is known by ${fresh} now. The old address is told.`,
	)

	await theirs.reload()
	await expect(theirs).toHaveURL(/\/sign-in\?/)
	const told = await mailbox.next(maud.address, /^Your mail address was changed$/)
	expect(told.text).toContain('This one opens no door any more')
	expect(told.text).not.toContain(fresh)
	expect(new URL(linkIn(told)).pathname).toBe('/sign-in')

	const guest = await visit(phone)
	await signInBy(guest, mailbox, fresh)
	await expect(guest.getByRole('heading', { name: cast.clients.bakery.name })).toBeVisible()
	expect(mailbox.mails.filter(({ to, subject }) => to === maud.address && /link to sign in/.test(subject))).toEqual([])
})

test('a person with two doors has one address, and the form says so', async ({ as, cast }) => {
	const { twoDoors: hester } = cast.people
	const page = await as('designer', laptop)
	await page.goto(`/studio/clients/${cast.clients.vet.id}`)
	const contacts = page.getByRole('region', { name: 'Contacts' })
	await contacts.getByText(`Change the address… of ${hester.name}`).click()
	await expect(contacts.getByText(`it changes for ${cast.clients.fieldstone.name} too`)).toBeVisible()
})

test('a designer looks for a client, by whatever they remember', async ({ as, cast }) => {
	const page = await as('designer', laptop)
	await page.goto('/studio/clients')
	const box = page.getByRole('searchbox', { name: 'Look for a client' })
	await box.fill('HÉSTER')
	await box.press('Enter')
	await expect(page).toHaveURL(/\?q=H%C3%89STER$/)
	await expect(page.getByRole('status')).toHaveText('2 clients have “HÉSTER” in name, place or contact.')
	await expect(page.getByRole('link', { name: cast.clients.vet.name })).toBeVisible()
	await expect(page.getByRole('link', { name: cast.clients.fieldstone.name })).toBeVisible()
	await expect(page.getByRole('link', { name: cast.clients.bakery.name })).toHaveCount(0)
	await box.fill('nobody of that name')
	await page.getByRole('button', { name: 'Look' }).click()
	await expect(page.getByRole('status')).toHaveText('No client has “nobody of that name” in name, place or contact.')
	await page.getByRole('link', { name: 'All clients' }).click()
	await expect(page.getByRole('link', { name: cast.clients.bakery.name })).toBeVisible()
})
