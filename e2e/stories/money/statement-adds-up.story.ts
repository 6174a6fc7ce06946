import type { Page } from '@playwright/test'
import { expect, laptop, phone, test } from '../../site/story'

type Amounts = {
	readonly what: string
	readonly charged: number
	readonly paid: number
	readonly balance: number
}

/** "$1,204.50" and "−$30.00" in cents; nothing is nought. */
const centsIn = (text: string): number =>
	Number(text.replaceAll('−', '-').replaceAll(/[^\d-]/g, '')) * (text.includes('.') || text === '' ? 1 : Number.NaN)

/** "$120.00 to pay", "$30.00 kept as credit", "Nothing to pay": a balance in cents. */
function balanceIn(sentence: string): number {
	const amount = centsIn(/\$[\d,.]+\d/.exec(sentence)?.[0] ?? '')
	return sentence.includes('kept as credit') ? -amount : amount
}

async function linesOn(page: Page): Promise<Amounts[]> {
	const rows = await page
		.getByRole('region', { name: /^Statement of/ })
		.getByRole('row')
		.all()
	const cells = await Promise.all(rows.slice(1).map((row) => row.getByRole('cell').allInnerTexts()))
	// On a phone the day stands above the words, and not in a column of its own.
	const told = (what: string) =>
		what.split('\n').find((line) => /^(Invoice|Payment|Credit note|Refund)/.test(line)) ?? what
	return cells.map((row) => {
		const [what = '', charged = '', paid = '', balance = ''] = row.slice(-4)
		return { what: told(what), charged: centsIn(charged), paid: centsIn(paid), balance: centsIn(balance) }
	})
}

/** Records of a file of comma-separated values (RFC 4180). */
const recordsIn = (text: string): string[][] =>
	text
		.trimEnd()
		.split('\r\n')
		.map((line) =>
			[...line.matchAll(/(?:^|,)(?:"((?:[^"]|"")*)"|([^,]*))/g)].map(
				([, quoted, plain]) => quoted?.replaceAll('""', '"') ?? plain ?? '',
			),
		)

test('a statement adds up to the cent, on the page, at the client’s door and as a table', async ({ as, cast }) => {
	test.slow()
	const { id, name } = cast.clients.approved
	const path = `/studio/money/${id}`
	const page = await as('designer', laptop)
	const form = (heading: string) => page.locator('form').filter({ hasText: heading })
	const year = Number(cast.today.slice(0, 4))
	async function pay(amount: string, reference: string, { on, keepRest = false }: { on?: string; keepRest?: boolean }) {
		const paying = form('A payment came')
		await paying.getByLabel('Day').fill(on ?? (await paying.getByLabel('Day').inputValue()))
		await paying.getByLabel('Amount').fill(amount)
		await paying.getByLabel('How').selectOption('bank transfer')
		await paying.getByLabel('Reference').fill(reference)
		await paying.getByLabel(/^If it is more than is due/).setChecked(keepRest)
		await paying.getByRole('button', { name: 'Write it down' }).click()
	}
	const statement = page.getByRole('region', { name: `Statement of ${year}` })

	await page.goto(path)
	await pay('50.00', 'In advance', { on: `${year - 1}-12-30` })
	await expect(page.getByRole('alert', { name: 'One thing needs another look' })).toContainText('more than')
	await pay('50.00', 'In advance', { on: `${year - 1}-12-30`, keepRest: true })
	await expect(page.getByRole('status')).toContainText('Written down.')
	await page.goto('/studio/money')
	await page.getByRole('button', { name: `Write and send what ${name} owes` }).click()
	await expect(page.getByRole('heading', { level: 1, name })).toBeVisible()

	await page.goto(path)
	await pay('100.00', 'Brackwater, "pots"', {})
	await expect(statement).toContainText('"pots"')
	await page.getByText('Credit an invoice, or write it off').click()
	const crediting = form('Credit it: it was not owed')
	await crediting.getByLabel('Amount, tax in it').fill('25.05')
	await crediting.getByLabel('Why').fill('One pot came a week late.')
	await crediting.getByRole('button', { name: 'Credit it: it was not owed' }).click()
	await expect(statement).toContainText('Credit note')
	await pay('900.00', 'All the rest', { keepRest: true })
	await expect(statement).toContainText('All the rest')
	await page.getByText('Give money back').click()
	const back = form('Write the refund down')
	await back.getByLabel('Amount').fill('31.07')
	await back.getByLabel('Reference').fill('Back to their account')
	await back.getByRole('button', { name: 'Write the refund down' }).click()
	await expect(statement).toContainText('Back to their account')

	const opening = balanceIn(String(await statement.getByText(/^Before 1 January/).textContent()))
	const closing = balanceIn(String(await statement.getByText(/^At the end: /).textContent()))
	const lines = await linesOn(page)
	expect(opening).toBe(-5000)
	expect(lines.map(({ what }) => what.replace(/ .*/, ''))).toEqual(
		expect.arrayContaining(['Invoice', 'Payment', 'Credit', 'Refund']),
	)
	let balance = opening
	for (const line of lines) {
		balance += line.charged - line.paid
		expect([line.what, line.balance]).toEqual([line.what, balance])
	}
	expect(closing).toBe(balance)
	const moved = (side: 'charged' | 'paid') => lines.reduce((all, line) => all + line[side], 0)
	expect(moved('paid')).toBe(10_000 + 2505 + 90_000)
	expect(opening + moved('charged') - moved('paid')).toBe(closing)
	expect(closing).toBeLessThan(0)

	const link = String(await statement.getByRole('link', { name: /CSV/ }).getAttribute('href'))
	const [, before, ...records] = recordsIn(await (await page.request.get(link)).text())
	const cents = (text = '') => Math.round(Number(text) * 100)
	expect(cents(before?.[4])).toBe(opening)
	expect(cents(records.at(-1)?.[4])).toBe(closing)
	expect(
		records.slice(0, -1).map(([, what, charged, paid, stands]) => ({
			...{ what, charged: cents(charged), paid: cents(paid), balance: cents(stands) },
		})),
	).toEqual(lines)

	const client = await as('approvedApprover', phone)
	await client.goto(`/home/${id}/account`)
	expect(await linesOn(client)).toEqual(lines)
	expect(balanceIn(String(await client.getByText(/^At the end: /).textContent()))).toBe(closing)
})
