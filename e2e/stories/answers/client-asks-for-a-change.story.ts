import { linkIn } from '../../site/mailbox'
import { groupOn, rowOf } from '../../site/season'
import { expect, laptop, phone, test } from '../../site/story'

const wish = {
	door: 'Could the door pot be a little taller? The lintel is high.',
	window: 'Nothing that hangs before the glass, please.',
}
const letter = 'The door pot is taller now: four stems more of the birch, so that it meets the lintel.'

test('a client asks for a change to two parts, sees what changed, and approves the second revision', async ({
	as,
	cast,
	mailbox,
}) => {
	const { designer: isolde, stuccoApprover: caspar } = cast.people
	const household = cast.clients.stucco.name
	const path = `/proposal/${cast.proposals.stucco}`
	const page = await as('stuccoApprover', phone)
	const oldTab = await page.context().newPage()
	await oldTab.goto(`${path}/approve?option=a`)
	await expect(oldTab.getByRole('heading', { name: 'Check before you approve' })).toBeVisible()

	await page.goto(path)
	await page.getByRole('link', { name: 'Ask for a change' }).click()
	await page.getByRole('textbox', { name: 'Door pot' }).fill(wish.door)
	await page.getByRole('textbox', { name: 'Kitchen window' }).fill(wish.window)
	await page.getByRole('button', { name: 'Ask for this change' }).click()
	await expect(page.getByRole('heading', { name: 'We have your wishes.' })).toBeVisible()
	await expect(page.getByRole('region', { name: 'What you wrote' }).getByRole('definition')).toHaveText([
		wish.door,
		wish.window,
	])
	const asked = await mailbox.next(isolde.address, /Merrowin household asks for a change/)
	expect(asked.text).toContain(`Door pot: ${wish.door}`)
	expect(asked.text).toContain(`Kitchen window: ${wish.window}`)

	const studio = await as('designer', laptop)
	await studio.goto('/studio')
	const row = rowOf(groupOn(studio, 'Waiting for us'), household)
	await expect(row).toContainText('Change asked for')
	await expect(row).toContainText(`“${wish.door}”`)
	await row.getByRole('link', { name: `Revise ${household}` }).click()
	const answer = studio.getByRole('region', { name: 'Their answer' })
	await expect(answer).toContainText(`${caspar.name} asks for a change`)
	await expect(answer.getByRole('listitem')).toHaveText([`Door pot: ${wish.door}`, `Kitchen window: ${wish.window}`])
	const birches = studio.getByRole('textbox', { name: 'Count, Frost and violet, Door pot, line 1' })
	await expect(birches).toHaveValue('12')
	await birches.fill('16')
	await studio.getByRole('textbox', { name: 'Letter' }).fill(letter)
	await studio.getByRole('button', { name: 'Publish to the client' }).click()
	await studio.getByRole('button', { name: 'Publish', exact: true }).click()
	await expect(studio.getByText('Published. The client’s contacts hear of it by mail.')).toBeVisible()

	const revised = await mailbox.next(caspar.address, /design for winter .*, revised$/)
	expect(revised.text).toContain('has been revised')
	await page.goto(linkIn(revised))
	const changes = page.getByRole('region', { name: 'What changed since revision 1' })
	const changed = (field: string) => changes.getByRole('definition').nth(fields.indexOf(field))
	const fields = ['Frost and violet: total', 'Frost and violet, Door pot: white birch', 'Letter']
	await expect(changes.getByRole('term')).toHaveText(fields)
	await expect(changed('Letter').getByRole('deletion')).toHaveText(
		/^Was: The warm stucco makes every violet look deeper/,
	)
	await expect(changed('Letter').getByRole('insertion')).toHaveText(`Now: ${letter}`)
	await expect(changed('Frost and violet, Door pot: white birch')).toHaveText('Was: 12 stemsNow: 16 stems')
	const total = String(
		await page
			.getByRole('row', { name: /^Total/ })
			.getByRole('cell')
			.textContent(),
	)
	await expect(changed('Frost and violet: total').getByRole('insertion')).toHaveText(`Now: ${total}`)
	await expect(changed('Frost and violet: total').getByRole('deletion')).toHaveText(/^Was: \$\d+\.\d\d$/)

	await oldTab.getByRole('button', { name: 'Approve this design' }).click()
	await expect(oldTab.getByRole('main').getByRole('alert')).toHaveText(
		'The design was revised while you were reading. Your answer was not taken: look at what changed, then answer.',
	)
	await expect(oldTab.getByText(letter, { exact: true })).toBeVisible()

	await page.getByRole('button', { name: 'Approve this design' }).click()
	await page.getByRole('button', { name: 'Approve this design' }).click()
	await expect(page.getByRole('heading', { name: 'Approved. Thank you.' })).toBeVisible()
	const receipt = await mailbox.next(caspar.address, /^Approved/)
	expect(receipt.text).toContain(total)
})
