import { expect, phone, test } from '../site/story'

test('a helper sees on a phone what goes into which pot, and no price', async ({ as, cast }) => {
	const page = await as('helper', phone)
	await page.goto('/')
	await expect(page.getByRole('heading', { level: 1, name: 'To install' })).toBeVisible()
	await expect(page.getByRole('heading', { level: 2 })).toHaveText([
		cast.clients.approved.name,
		cast.clients.creditUnion.name,
	])
	await expect(page.getByRole('navigation').getByRole('link')).toHaveText(['To install'])

	const union = page.getByRole('region', { name: cast.clients.creditUnion.name })
	await expect(union).toContainText('Water from the yard, the guard has the key.')
	await expect(union).toContainText('Closed on Mondays; park on the slope, wheels to the kerb.')
	await expect(union.getByRole('group')).toHaveCount(6)
	const left = union.getByRole('group').filter({ hasText: 'Left of the doors' })
	await expect(left.getByRole('listitem')).toHaveText([
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
