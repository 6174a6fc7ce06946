import { codeIn } from '../../site/mailbox'
import { expect, laptop, phone, test } from '../../site/story'

test('a helper sees on a phone what goes into which pot, and no price', async ({ as, cast }) => {
	const page = await as('helper', phone)
	await page.goto('/')
	await expect(page.getByRole('heading', { level: 1, name: 'To install' })).toBeVisible()
	await expect(page.getByRole('heading', { level: 2 })).toHaveText([
		cast.clients.approved.name,
		cast.clients.creditUnion.name,
	])
	await expect(page.getByRole('navigation').getByRole('link')).toHaveText(['To install', 'Visits'])

	const union = page.getByRole('region', { name: cast.clients.creditUnion.name })
	await expect(union.getByText('Water from the yard')).toBeHidden()
	await union.getByRole('heading', { name: cast.clients.creditUnion.name }).click()
	await expect(union).toContainText('Water from the yard, the guard has the key.')
	await expect(union).toContainText('Closed on Mondays; park on the slope, wheels to the kerb.')
	await expect(union.getByRole('group')).toHaveCount(4)
	const pair = union.getByRole('group').filter({ hasText: /^2 × Left of the doors and Right of the doors/ })
	await expect(pair.getByRole('listitem')).toHaveText([
		'23 stemsgold-twig dogwood',
		'26 stemsnoble fir',
		'20 stemsboxwood',
		'15 stemscedar',
		'4 piecesclusters of brass globes',
		'3 piecesnavy velvet bows',
		'5 piecesbamboo stakes',
	])
	const house = page.getByRole('region', { name: cast.clients.approved.name })
	await expect(house).toContainText('Outlet behind the left shutter.')
	await expect(house).toContainText('Extra: Two strings of warm lights')
	await expect(house.getByRole('listitem').filter({ hasText: 'warm light strings' })).toHaveText(
		'2 stringswarm light strings',
	)

	await expect(page.getByRole('document')).not.toContainText('$')
})

test('a helper finds nothing else of the studio', async ({ as, cast }) => {
	const page = await as('helper', phone)
	const client = `/studio/clients/${cast.clients.creditUnion.id}`
	const desk = `/studio/proposal/${cast.proposals.creditUnion}`
	const rooms = [
		'/studio',
		`/studio/season/${cast.seasons.winter}`,
		'/studio/clients',
		'/studio/clients/new',
		client,
		`${client}/edit`,
		`${client}/place?place=${cast.places.creditUnion}`,
		`${client}/container?place=${cast.places.creditUnion}&container=${cast.containers.creditUnionLeft}`,
		'/studio/materials',
		`/studio/materials/card?material=${cast.materials.winterberry}`,
		'/studio/settings',
		desk,
		`${desk}/preview`,
		`/proposal/${cast.proposals.creditUnion}`,
		`/proposal/${cast.proposals.creditUnion}/done`,
		`/home/${cast.clients.creditUnion.id}`,
		'/home',
	]
	for (const room of rooms) expect.soft((await page.request.get(room)).status(), room).toBe(404)
	await page.goto(desk)
	await expect(page.getByRole('heading', { name: 'Not found' })).toBeVisible()
	await page.getByRole('link', { name: 'To the start' }).click()
	await expect(page.getByRole('heading', { name: 'To install' })).toBeVisible()
})

test('a designer lets a helper in, and closes the door behind them when they leave', async ({
	as,
	visit,
	cast,
	mailbox,
}) => {
	const perrin = { name: 'Perrin Ashgrove', address: 'perrin@sedgeandlantern.example' }
	const designer = await as('designer', laptop)
	await designer.goto('/studio/settings')
	const staff = designer.getByRole('region', { name: 'Who works here' })
	await staff.getByText('Let a helper in').click()
	await staff.getByLabel('Their name').fill(perrin.name)
	await staff.getByLabel('Their mail address').fill(cast.people.bakeryApprover.address)
	await staff.getByRole('button', { name: 'Let them in' }).click()
	await expect(staff.getByLabel('Their mail address')).toHaveAccessibleDescription(
		'This address belongs to a client’s contact.',
	)
	await expect(staff.getByLabel('Their name')).toHaveValue(perrin.name)
	await staff.getByLabel('Their mail address').fill(perrin.address)
	await staff.getByRole('button', { name: 'Let them in' }).click()
	await expect(staff.getByRole('listitem').filter({ hasText: perrin.name })).toContainText(`helper, ${perrin.address}`)
	await expect(staff.getByRole('button', { name: `Close the door to ${cast.people.designer.name}` })).toHaveCount(0)

	const helper = await visit(phone)
	await helper.goto('/')
	await helper.getByLabel('Mail address').fill(perrin.address)
	await helper.getByRole('button', { name: 'Send me the link' }).click()
	const mail = await mailbox.next(perrin.address, /link to sign in/)
	await helper.getByLabel('Code from the mail').fill(codeIn(mail))
	await helper.getByRole('button', { name: 'Sign in' }).click()
	await expect(helper.getByRole('heading', { level: 1, name: 'To install' })).toBeVisible()

	await staff.getByRole('button', { name: `Close the door to ${perrin.name}` }).click()
	await expect(staff.getByRole('listitem').filter({ hasText: perrin.name })).toHaveCount(0)
	await helper.reload()
	await expect(helper.getByRole('heading', { name: 'Sign in' })).toBeVisible()
})
