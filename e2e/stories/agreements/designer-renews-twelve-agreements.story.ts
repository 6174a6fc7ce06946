import type { Page } from '@playwright/test'
import { addMonths } from '@/lib/agreement/instalment/months'
import { addDays } from '@/lib/units/day'
import { issuedTo } from '../../site/agreement'
import { linkIn, type Mailbox } from '../../site/mailbox'
import { onPaper } from '../../site/on-paper'
import { mailsToSend } from '../../site/record'
import { expect, laptop, phone, test } from '../../site/story'

const twelve = [
	...(['bakery', 'dental', 'inn', 'bookshop', 'skipped', 'vet'] as const),
	...(['bicycles', 'chandlery', 'clapboard', 'fieldstone', 'stucco', 'unpriced'] as const),
]

type Signer = { readonly name: string; readonly address: string }

/** From the mail that asks, by a link to sign in, to the name under it. */
async function signFromMail(page: Page, mailbox: Mailbox, { name, address }: Signer, subject: RegExp): Promise<void> {
	await page.goto(linkIn(await mailbox.next(address, subject)))
	await page.getByRole('button', { name: 'Send me the link' }).click()
	await page.goto(linkIn(await mailbox.next(address, /^Your link to sign in$/)))
	await page.getByRole('button', { name: 'Sign in' }).click()
	await page.getByRole('link', { name: 'Go on to sign' }).first().click()
	await page.getByRole('checkbox', { name: /^I agree to have these records on a screen/ }).check()
	await page.getByRole('button', { name: 'Agree and go on' }).click()
	await page.getByLabel('Your name').fill(name)
	await page.getByRole('button', { name: 'Sign the agreement' }).click()
	await expect(page.getByRole('heading', { level: 1, name: 'Signed. Thank you.' })).toBeVisible()
}

test('a designer renews twelve agreements at 4 % more, one of them adjusted, and two clients sign', async ({
	as,
	visit,
	site,
	cast,
	mailbox,
}) => {
	test.slow()
	// It begins the day after it was to be signed, and holds for a year.
	const begins = addDays(cast.today, 15)
	const ends = addDays(begins, 364)
	const next = addMonths(ends, 12).slice(0, 4)
	const asks = new RegExp(`^Your agreement for ${addMonths(begins, 12).slice(0, 4)}`)
	for (const key of twelve) await onPaper(site, await issuedTo(site, key))
	const page = await as('designer', laptop)
	await page.goto('/studio/agreements')
	await page.getByRole('link', { name: 'Renew for another year' }).click()
	await page.getByLabel('That end in').fill(ends.slice(0, 4))
	await page.getByLabel('Prices change by').fill('4')
	await page.getByRole('button', { name: 'Work it out' }).click()
	await expect(page.getByRole('checkbox', { name: /^Renew / })).toHaveCount(12)
	const price = page.getByRole('textbox', { name: new RegExp(`^${cast.clients.inn.name}, winter`) })
	// 612.50 and 4 % are 637.00: to fives 635.00.
	await expect(price).toHaveValue('635.00')
	await price.fill('650.00')
	await page.getByRole('button', { name: 'Issue what is ticked' }).click()
	await expect(page.getByRole('heading', { name: 'Twelve issued' })).toBeVisible()
	await expect(page.getByRole('checkbox', { name: /^Renew / })).toHaveCount(0)
	await page.getByRole('link', { name: cast.clients.inn.name }).click()
	await expect(page.getByText('$1,050.00 fixed in all')).toBeVisible()

	// Some fifty mails are on their way.
	await expect.poll(() => mailsToSend(site), { timeout: 120_000 }).toBe(0)
	for (const signer of [cast.people.innApprover, cast.people.stuccoApprover])
		await signFromMail(await visit(phone), mailbox, signer, asks)
	await page.goto(`/studio/agreements?year=${next}`)
	const rows = page.getByRole('row').filter({ has: page.getByRole('link') })
	await expect(rows.filter({ hasText: 'To be signed' })).toHaveCount(10)
	for (const { name } of [cast.clients.inn, cast.clients.stucco])
		await expect(rows.filter({ hasText: name })).toContainText('Signed')
	await page.getByRole('link', { name: cast.clients.inn.name }).click()
	const signed = page.getByRole('region', { name: 'Signed and opened' })
	await expect(signed).toContainText(cast.people.innApprover.name)
	await expect(signed).not.toContainText('on paper')
})
