import sharp from 'sharp'
import { addDays } from '@/lib/units/day'
import { expect, phone, test } from '../../site/story'

test('a client sees the visit history and reports a broken globe; the designer plans it', async ({
	as,
	cast,
	mailbox,
}) => {
	test.slow()
	const client = await as('bakeryApprover', phone)
	await client.goto(`/home/${cast.clients.bakery.id}`)
	await client.getByRole('link', { name: 'All visits' }).click()
	const autumn = client.getByRole('region', { name: /^Autumn/ })
	await expect(autumn.getByRole('link', { name: 'Wheat and russet', exact: true })).toBeVisible()
	await expect(autumn.getByText(/^Installed .* by Isolde and Tobin$/)).toBeVisible()
	await expect(autumn.getByRole('img', { name: /^After, installed/ })).toBeVisible()

	await client.getByRole('link', { name: 'Something is wrong' }).click()
	await client.getByLabel('What is wrong').fill('A globe in the window box is broken.')
	const background = '#8a5a2b'
	const buffer = await sharp({ create: { width: 2400, height: 1800, channels: 3, background } })
		.jpeg()
		.toBuffer()
	await client.getByLabel('Photos').setInputFiles({ name: 'globe.jpg', mimeType: 'image/jpeg', buffer })
	await client.getByRole('button', { name: 'Tell the studio' }).click()
	await expect(client.getByRole('status')).toContainText('We have it; we plan a visit.')
	await expect(client.getByRole('img', { name: 'What is wrong, as you sent it' })).toBeVisible()

	const mail = await mailbox.next(cast.people.designer.address, /^Something is wrong at Marrowby Bakery/)
	expect(mail.text).toContain('A globe in the window box is broken.')

	const designer = await as('designer', phone)
	await designer.goto(`/studio/season/${cast.seasons.winter}`)
	await designer.getByRole('link', { name: 'Something is wrong at Marrowby Bakery' }).click()
	await expect(designer.getByText('“A globe in the window box is broken.”')).toBeVisible()
	await designer.getByLabel('Day').fill(addDays(cast.today, 3))
	await designer.getByRole('button', { name: 'Plan it for this day' }).click()
	await expect(designer.getByRole('status').filter({ hasText: 'Planned.' })).toBeVisible()

	await client.goto(`/home/${cast.clients.bakery.id}/visits`)
	await expect(client.getByText(/^Check planned for /)).toBeVisible()
})
