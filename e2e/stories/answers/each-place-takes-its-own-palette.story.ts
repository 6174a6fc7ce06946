import { groupOn, rowOf } from '../../site/season'
import { expect, laptop, phone, test } from '../../site/story'

test('a client of two places picks another palette for one of them on a phone, and the receipt says both', async ({
	as,
	cast,
	mailbox,
}) => {
	const { fieldstoneApprover } = cast.people
	const page = await as('fieldstoneApprover', phone)
	await page.goto(`/proposal/${cast.proposals.fieldstone}`)
	const bar = page.getByRole('region', { name: 'Your answer' })
	const total = page.getByRole('row', { name: /^Total/ }).getByRole('cell')
	const boathouse = page.getByRole('group', { name: 'Boathouse' })
	await expect(page.getByText('Another palette for a place?')).toHaveCount(0)

	await page.getByRole('link', { name: /^Put it on the wall\s*: Rust and moss$/ }).click()
	await expect(bar).toContainText('Rust and moss')
	const whole = String(await total.textContent())
	await page.getByText('Another palette for a place?').click()
	await expect(boathouse.getByRole('radio', { name: 'Rust and moss' })).toBeChecked()
	await boathouse.getByRole('radio', { name: 'Frost and violet' }).check()
	await expect(bar).toContainText('Rust and moss; Frost and violet at Boathouse')
	await expect(total).not.toHaveText(whole)
	const both = String(await total.textContent())
	await expect(bar).toContainText(`${both} · goes in`)
	await expect(page.getByRole('img', { name: /^Boathouse\. Winter, by day: one container/ })).toBeVisible()
	await expect(page.getByText('At Boathouse', { exact: true })).toBeVisible()

	await page.getByRole('link', { name: /^Put it on every wall\s*: Rust and moss$/ }).click()
	await expect(total).toHaveText(whole)
	await expect(boathouse.getByRole('radio', { name: 'Rust and moss' })).toBeChecked()
	await boathouse.getByRole('radio', { name: 'Frost and violet' }).check()
	await expect(total).toHaveText(both)

	await bar.getByRole('button', { name: 'Approve this design' }).click()
	await expect(page.getByRole('heading', { name: 'Check before you approve' })).toBeVisible()
	await expect(page.getByText('Rust and moss; Frost and violet at Boathouse', { exact: true })).toBeVisible()
	await expect(page.getByText(both, { exact: true })).toBeVisible()
	await page.getByRole('link', { name: 'Back to the design' }).click()
	await expect(boathouse.getByRole('radio', { name: 'Frost and violet' })).toBeChecked()
	await bar.getByRole('button', { name: 'Approve this design' }).click()
	await page.getByRole('button', { name: 'Approve this design' }).click()

	await expect(page.getByRole('heading', { name: 'Approved. Thank you.' })).toBeVisible()
	await expect(page.getByText('Rust and moss; Frost and violet at Boathouse', { exact: true })).toBeVisible()
	const receipt = await mailbox.next(fieldstoneApprover.address, /^Approved/)
	for (const line of ['Rust and moss; Frost and violet at Boathouse', both]) expect(receipt.text).toContain(line)
	await page.getByRole('link', { name: 'Back to the design' }).click()
	await expect(
		page.getByRole('heading', { name: 'The palettes you chose: Rust and moss; Frost and violet at Boathouse' }),
	).toBeVisible()

	const studio = await as('designer', laptop)
	await studio.goto('/studio')
	await expect(rowOf(groupOn(studio, 'Settled'), cast.clients.fieldstone.name)).toContainText(
		'Rust and moss; Frost and violet at Boathouse',
	)
	await studio.goto(`/studio/proposal/${cast.proposals.fieldstone}`)
	await expect(studio.getByRole('region', { name: 'Their answer' })).toContainText(
		'approved Rust and moss; Frost and violet at Boathouse',
	)
	await studio.goto('/studio/install')
	await expect(studio.getByText(/^Rust and moss; Frost and violet at Boathouse, goes in/)).toBeVisible()
})

test('before the scripts arrive the total comes by a button', async ({ as, cast }) => {
	const page = await as('fieldstoneApprover', { ...phone, javaScriptEnabled: false })
	await page.goto(`/proposal/${cast.proposals.fieldstone}?option=b`)
	const total = page.getByRole('row', { name: /^Total/ }).getByRole('cell')
	const whole = String(await total.textContent())
	await page.getByText('Another palette for a place?').click()
	const porch = page.getByRole('group', { name: 'Porch' })
	await porch.getByRole('radio', { name: 'Rust and moss' }).check()
	await page.getByRole('button', { name: 'Update the total' }).first().click()
	await expect(total).not.toHaveText(whole)
	await expect(page.getByRole('region', { name: 'Your answer' })).toContainText(
		'Rust and moss; Copper and plum at Boathouse',
	)
	await page.getByRole('group', { name: 'Boathouse' }).getByRole('radio', { name: 'Frost and violet' }).check()
	await page.getByRole('button', { name: 'Approve this design' }).click()
	await expect(page.getByText('Rust and moss; Frost and violet at Boathouse', { exact: true })).toBeVisible()
})
