import { longDay } from '@/lib/format/day'
import { addDays } from '@/lib/units/day'
import { mailsToSend } from '../../site/record'
import { groupOn, rowOf } from '../../site/season'
import { expect, laptop, phone, test } from '../../site/story'

/** Client, days left, seen or not: in the order in which their answers fall due. */
const outstanding = [
	['vet', '1 day left', 'seen'],
	['dental', '3 days left', 'not seen yet'],
	['bakery', '3 days left', 'seen'],
	['stucco', '4 days left', 'not seen yet'],
	['fieldstone', '4 days left', 'seen'],
	['clapboard', '5 days left', 'seen'],
] as const
const others = [
	['Waiting for us', ['bookshop', 'bicycles', 'unpriced', 'inn']],
	['Settled', ['installed', 'creditUnion', 'cancelled', 'approved', 'skipped', 'chandlery', 'withdrawn']],
] as const

const centsIn = (text: string) => Number(text.replaceAll(/[^\d]/g, ''))

test('a designer sees at a glance who still owes an answer', async ({ as, cast }) => {
	const page = await as('designer', laptop)
	await page.goto('/studio')
	await expect(page.getByRole('rowheader')).toHaveText(['Waiting for them', 'Waiting for us', 'Settled'])
	const them = groupOn(page, 'Waiting for them')
	await expect(them.getByRole('row')).toHaveCount(outstanding.length + 1)
	for (const [index, [client, left, seen]] of outstanding.entries()) {
		const row = them.getByRole('row').nth(index + 1)
		await expect(row).toContainText(cast.clients[client].name)
		await expect(row.getByRole('cell', { name: 'Waiting for an answer' })).toBeVisible()
		await expect(row.getByRole('cell', { name: left })).toBeVisible()
		await expect(row.getByRole('cell', { name: new RegExp(`^${seen}`) })).toBeVisible()
		await expect(row.getByRole('button', { name: `Remind ${cast.clients[client].name}` })).toBeVisible()
	}
	for (const [group, clients] of others) {
		await expect(groupOn(page, group).getByRole('row')).toHaveCount(clients.length + 1)
		for (const client of clients) await expect(rowOf(groupOn(page, group), cast.clients[client].name)).toHaveCount(1)
		await expect(groupOn(page, group).getByRole('button', { name: /^Remind/ })).toHaveCount(0)
	}

	const first = longDay(addDays(cast.today, 1))
	const sentence = page.getByText(/still owe an answer/)
	await expect(sentence).toContainText(`Six of 17 still owe an answer, the first by ${first}. Four wait for you.`)
	const values = await them.getByRole('cell', { name: /^(from )?\$/ }).allTextContents()
	const [, out = ''] = /at least (\$[\d,.]+) is out, before tax\.$/.exec(String(await sentence.textContent())) ?? []
	expect(values).toHaveLength(outstanding.length)
	expect(centsIn(out)).toBe(values.reduce((all, value) => all + centsIn(value), 0))

	const client = await as('dentalApprover', phone)
	await client.goto(`/proposal/${cast.proposals.dental}`)
	await expect(client.getByRole('heading', { level: 1 })).toBeVisible()
	await page.reload()
	await expect(rowOf(them, cast.clients.dental.name)).toContainText('seen today')
	await expect(rowOf(them, cast.clients.stucco.name)).toContainText('not seen yet')
})

test('a designer reminds one client, and is asked before doing it again', async ({ as, cast, site, mailbox }) => {
	const { dentalApprover: approver, dentalViewer: viewer } = cast.people
	const { name } = cast.clients.dental
	const reminders = (address: string) =>
		mailbox.mails.filter(({ to, subject }) => to === address && /^We still need your answer/.test(subject))
	const page = await as('designer', laptop)
	await page.goto('/studio')
	const row = rowOf(groupOn(page, 'Waiting for them'), name)
	await row.getByRole('button', { name: `Remind ${name}` }).click()
	await expect(row.getByRole('status')).toHaveText('Reminded')
	await mailbox.next(approver.address, /^We still need your answer/)

	await page.getByRole('link', { name: 'Season', exact: true }).click()
	await row.getByRole('button', { name: `Remind ${name}` }).click()
	await expect(row.getByRole('alert')).toHaveText(/^Reminded .+ already\.$/)
	await expect.poll(() => mailsToSend(site)).toBe(0)
	expect(reminders(approver.address)).toHaveLength(1)

	await row.getByRole('button', { name: `Remind again all the same ${name}` }).click()
	await expect(row.getByRole('status')).toHaveText('Reminded')
	await mailbox.next(approver.address, /^We still need your answer/, 1)
	await expect.poll(() => mailsToSend(site)).toBe(0)
	expect(reminders(approver.address)).toHaveLength(2)
	expect(reminders(viewer.address)).toEqual([])
	const others = groupOn(page, 'Waiting for them').getByRole('button', { name: /^Remind / })
	await expect(others).toHaveCount(outstanding.length - 1)
})

test('a draft that is published waits for them from then on', async ({ as, cast, mailbox }) => {
	const { name } = cast.clients.bicycles
	const page = await as('designer', laptop)
	await page.goto('/studio')
	const drafted = rowOf(groupOn(page, 'Waiting for us'), name)
	await expect(drafted).toContainText('Drafting')
	await drafted.getByRole('link', { name: `Finish ${name}` }).click()
	await page.getByRole('button', { name: 'Publish to the client' }).click()
	await page.getByRole('button', { name: 'Publish', exact: true }).click()
	await expect(page.getByText('Published. The client’s contacts hear of it by mail.')).toBeVisible()
	await mailbox.next(cast.people.bicyclesApprover.address, /^Your design for winter/)

	await page.getByRole('link', { name: 'Season', exact: true }).click()
	const row = rowOf(groupOn(page, 'Waiting for them'), name)
	await expect(row).toContainText('Waiting for an answer')
	await expect(row).toContainText('0 days')
	await expect(row).toContainText('10 days left')
	await expect(row).toContainText('not seen yet')
	await expect(rowOf(groupOn(page, 'Waiting for us'), name)).toHaveCount(0)
	await expect(page.getByText(/^Seven of 17 still owe an answer/)).toContainText('Three wait for you.')
})
