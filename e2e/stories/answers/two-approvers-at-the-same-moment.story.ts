import type { Page } from '@playwright/test'
import { countIn, mailsToSend } from '../../site/record'
import { expect, laptop, phone, test } from '../../site/story'

/** Holds back what each page posts until all have posted, then lets it all go at once. */
async function atOnce(pages: readonly Page[], where: string): Promise<void> {
	let open = () => {}
	const gate = new Promise<void>((resolve) => {
		open = resolve
	})
	let waiting = 0
	for (const page of pages)
		await page.route(where, async (route) => {
			waiting += 1
			if (waiting === pages.length) open()
			await gate
			await route.continue()
		})
}

function theOne<T>(found: readonly T[]): T {
	const [one, ...more] = found
	if (one === undefined || more.length > 0) throw new Error(`${found.length} where one was meant`)
	return one
}

test('of two approvers who press at the same moment one approves and the other is told', async ({
	as,
	cast,
	site,
	mailbox,
}) => {
	const { bakeryApprover: maud, bakerySecondApprover: hew, designer } = cast.people
	const path = `/proposal/${cast.proposals.bakery}`
	const theirs = [
		{ who: maud, page: await as('bakeryApprover', phone) },
		{ who: hew, page: await as('bakerySecondApprover', laptop) },
	]
	for (const { page } of theirs) await page.goto(`${path}/approve?option=a`)
	await atOnce(
		theirs.map(({ page }) => page),
		'**/answer/approve',
	)
	await Promise.all(theirs.map(({ page }) => page.getByRole('button', { name: 'Approve this design' }).click()))
	await Promise.all(theirs.map(({ page }) => page.waitForURL(/\/done$|[?]told=/)))

	const { page: done, who: winner } = theOne(theirs.filter(({ page }) => page.url().endsWith('/done')))
	const { page: told } = theOne(theirs.filter(({ page }) => !page.url().endsWith('/done')))
	await expect(done.getByRole('heading', { name: 'Approved. Thank you.' })).toBeVisible()
	const reference = await done.getByRole('definition').first().textContent()
	await expect(told.getByRole('main').getByRole('alert')).toHaveText(
		'It had been approved a moment before. Your answer was not taken; the first one stands.',
	)
	await expect(told.getByText(/^Approved on /)).toContainText(`by ${winner.name}, reference ${reference}.`)
	await expect(told.getByRole('button', { name: 'Approve this design' })).toHaveCount(0)

	await mailbox.next(winner.address, /^Approved: .*/)
	await mailbox.next(designer.address, /Marrowby Bakery approved/)
	await expect.poll(() => mailsToSend(site)).toBe(0)
	const receipts = mailbox.mails.filter(({ subject }) => subject.startsWith('Approved: '))
	const contacts = [maud, hew, cast.people.bakeryViewer].map(({ address }) => address)
	expect(receipts.map(({ to }) => to).toSorted()).toEqual(contacts.toSorted())
	expect(mailbox.mails.filter(({ subject }) => subject === 'Marrowby Bakery approved')).toHaveLength(1)
	const answers =
		'SELECT count(*) FROM answer JOIN revision ON revision.id = answer.revision_id WHERE revision.proposal_id = ?'
	expect(countIn(site, answers, cast.proposals.bakery)).toBe(1)
})
