import type { BrowserContextOptions, Page, Response } from '@playwright/test'
import type { Seeded } from '@/demo/seed'
import { linkIn, type Mailbox } from './mailbox'
import type { As, Key } from './story'

export type Shown = { readonly name: string; readonly as: Key; readonly at: (cast: Seeded) => string }

const shown =
	(as: Key) =>
	(name: string, at: (cast: Seeded) => string): Shown => ({ name, as, at })

const approved = shown('approvedApprover')
const bakery = shown('bakeryApprover')
const inn = shown('innApprover')
const threePalettes = shown('clapboardApprover')
const designer = shown('designer')

/** Every page behind the client's door, in every state that the cast has it in. */
export const clientPages: readonly Shown[] = [
	bakery('home', ({ clients }) => `/home/${clients.bakery.id}`),
	shown('skippedApprover')('home, nothing waits', ({ clients }) => `/home/${clients.skipped.id}`),
	bakery('visits', ({ clients }) => `/home/${clients.bakery.id}/visits`),
	bakery('something is wrong', ({ clients }) => `/home/${clients.bakery.id}/wrong`),
	shown('installedApprover')('visits, one reported', ({ clients }) => `/home/${clients.installed.id}/visits`),
	shown('twoDoors')('doors', () => '/home'),
	bakery('where they are signed in', () => '/devices'),
	bakery('one palette', ({ proposals }) => `/proposal/${proposals.bakery}`),
	shown('bakeryViewer')('one palette, to look at', ({ proposals }) => `/proposal/${proposals.bakery}`),
	threePalettes('three palettes', ({ proposals }) => `/proposal/${proposals.clapboard}`),
	threePalettes(
		'one of three on the wall',
		({ proposals }) => `/proposal/${proposals.clapboard}?option=b&extra=lights`,
	),
	approved('approved, second revision', ({ proposals }) => `/proposal/${proposals.approved}`),
	inn('change asked for', ({ proposals }) => `/proposal/${proposals.inn}`),
	shown('chandleryApprover')('lapsed', ({ proposals }) => `/proposal/${proposals.chandlery}`),
	shown('withdrawnApprover')('taken back', ({ proposals }) => `/proposal/${proposals.withdrawn}`),
	bakery('approve', ({ proposals }) => `/proposal/${proposals.bakery}/approve?option=a&extra=lights`),
	bakery('change', ({ proposals }) => `/proposal/${proposals.bakery}/change`),
	bakery('skip', ({ proposals }) => `/proposal/${proposals.bakery}/skip`),
	approved('done, approved', ({ proposals }) => `/proposal/${proposals.approved}/done`),
	inn('done, change asked for', ({ proposals }) => `/proposal/${proposals.inn}/done`),
	shown('skippedApprover')('done, skipped', ({ proposals }) => `/proposal/${proposals.skipped}/done`),
	bakery('not found', () => '/no/such/door'),
	shown('bakeryViewer')('not theirs to do', ({ proposals }) => `/proposal/${proposals.bakery}/approve`),
]

const client = ({ clients }: Seeded) => `/studio/clients/${clients.creditUnion.id}`

/** Every page of the studio. */
export const studioPages: readonly Shown[] = [
	designer('season', ({ seasons }) => `/studio/season/${seasons.winter}`),
	designer(
		'season, remind again',
		({ seasons, proposals }) => `/studio/season/${seasons.winter}?page=1&again=${proposals.vet}`,
	),
	designer(
		'season, some of it',
		({ seasons }) => `/studio/season/${seasons.winter}?show=waiting+for+them&kind=business&sort=value`,
	),
	designer('season, all reminded', ({ seasons }) => `/studio/season/${seasons.winter}?all=5.1`),
	designer('publish a season', ({ seasons }) => `/studio/season/${seasons.winter}/publish`),
	designer('an answer by phone', ({ proposals }) => `/studio/proposal/${proposals.bakery}/phone`),
	designer('an answer by phone, three palettes', ({ proposals }) => `/studio/proposal/${proposals.clapboard}/phone`),
	designer('plan a season', () => '/studio?plan'),
	designer('collection', ({ seasons }) => `/studio/season/${seasons.winter}/collection`),
	designer('a design', ({ seasons }) => `/studio/season/${seasons.winter}/collection?design=d1`),
	designer('an extra', ({ seasons }) => `/studio/season/${seasons.winter}/collection?extra=d1`),
	designer('apply the collection', ({ seasons }) => `/studio/season/${seasons.winter}/apply`),
	designer(
		'start from',
		({ seasons, clients }) => `/studio/season/${seasons.winter}/start?client=${clients.newcomer.id}`,
	),
	designer('desk, drafting', ({ proposals }) => `/studio/proposal/${proposals.unpriced}`),
	designer('desk, change asked for', ({ proposals }) => `/studio/proposal/${proposals.inn}`),
	designer('preview', ({ proposals }) => `/studio/proposal/${proposals.bicycles}/preview`),
	designer('visits', () => '/studio/visits'),
	designer('visit, to plan', ({ visits }) => `/studio/visits/${visits.globe}`),
	designer('visit, made', ({ visits }) => `/studio/visits/${visits.bakeryInstall}`),
	designer('new visit', ({ clients }) => `/studio/visits/new/${clients.vet.id}`),
	shown('helper')('visits, the helper', () => '/studio/visits'),
	designer('clients', () => '/studio/clients'),
	designer('clients, looked for', () => '/studio/clients?q=kittiwell'),
	designer('clients, nobody found', () => '/studio/clients?q=no+such+client'),
	designer('where she is signed in', () => '/devices'),
	shown('helper')('where the helper is signed in', () => '/devices'),
	designer('new client', () => '/studio/clients/new'),
	designer('client', client),
	designer('edit client', (cast) => `${client(cast)}/edit`),
	designer('at the kerb', (cast) => `${client(cast)}/kerb`),
	designer('new place', (cast) => `${client(cast)}/place`),
	designer('place', (cast) => `${client(cast)}/place?place=${cast.places.creditUnionBranch}`),
	designer(
		'container',
		(cast) => `${client(cast)}/container?place=${cast.places.creditUnion}&container=${cast.containers.creditUnionLeft}`,
	),
	designer('recipes', () => '/studio/recipes'),
	designer('recipe', ({ recipes }) => `/studio/recipes/card?recipe=${recipes.copperAndPlum}`),
	designer('new recipe', () => '/studio/recipes/card'),
	designer('suppliers', () => '/studio/suppliers'),
	designer('new container', (cast) => `${client(cast)}/container?place=${cast.places.creditUnion}`),
	designer('materials', () => '/studio/materials'),
	designer('material', ({ materials }) => `/studio/materials/card?material=${materials.winterberry}`),
	designer('settings', () => '/studio/settings'),
	designer('to install', () => '/studio/install'),
	designer('not found', () => '/studio/no-such-room'),
	shown('helper')('to install, the helper', () => '/studio/install'),
]

type Site = { readonly as: As; readonly cast: Seeded }
type LookAt = (page: Page, name: string, answer: Response | null) => Promise<void>

/** Goes through `pages` as whoever each is for, one browser a person, and looks at every one. */
export async function visitEach(
	{ as, cast }: Site,
	pages: readonly Shown[],
	options: BrowserContextOptions,
	lookAt: LookAt,
): Promise<void> {
	for (const who of new Set(pages.map((page) => page.as))) {
		const page = await as(who, options)
		for (const { name, at } of pages.filter((each) => each.as === who))
			await lookAt(page, name, await page.goto(at(cast)))
		await page.context().close()
	}
}

type Look = (name: string) => Promise<void>

/** The whole way in, from the sign-in page by a link to one that is over; `look` is called at every page of it. */
export async function walkIn(page: Page, mailbox: Mailbox, address: string, look: Look): Promise<void> {
	await page.goto('/sign-in')
	await look('sign in')
	await page.getByRole('button', { name: 'Send me the link' }).click()
	await page.waitForURL(/[?&]form=/)
	await look('sign in, no address')
	await page.getByLabel('Mail address').fill(address)
	await page.getByRole('button', { name: 'Send me the link' }).click()
	await page.waitForURL(/\/sent$/)
	await look('sent')
	const mail = await mailbox.next(address, /link to sign in/)
	await page.getByLabel('Code from the mail').fill('1')
	await page.getByRole('button', { name: 'Sign in' }).click()
	await page.waitForURL(/code=wrong/)
	await look('sent, wrong code')
	await page.goto(linkIn(mail))
	await look('confirm')
	await page.goto('/sign-in/over')
	await look('over')
}
