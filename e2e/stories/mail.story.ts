import { linkIn, type Mail } from '../site/mailbox'
import { mailsToSend } from '../site/record'
import { rowOf } from '../site/season'
import { signInBy } from '../site/session'
import { expect, laptop, phone, test } from '../site/story'

/** Each kind of mail: to whom it goes, about what, and how many pictures it shows, a cover among them where it asks for an answer. */
const kinds = [
	['a link to sign in', 'innApprover', /^Your link to sign in$/, 0],
	['published', 'clapboardViewer', /^Your design for winter [\d–]+$/, 4],
	['revised', 'stuccoApprover', /^Your design for winter [\d–]+, revised$/, 2],
	['a reminder', 'vetApprover', /^We still need your answer for winter/, 2],
	['a change asked for', 'designer', /^The Merrowin household asks for a change$/, 0],
	['approved, the receipt', 'bakeryApprover', /^Approved: your design for winter [\d–]+, \d{4}-\d{4}$/, 1],
	['approved, to the studio', 'designer', /^Marrowby Bakery approved$/, 1],
	['another browser', 'vetApprover', /^You signed in with another browser$/, 0],
	['an address changed, to the old one', 'creditUnionApprover', /^Your mail address was changed$/, 0],
	['skipped', 'designer', /^Lindquay Dental Practice skips winter/, 0],
] as const

const most = { words: 30_000, whole: 250_000 }

/** What is wrong with a mail, in words; nothing when it is as it should be. */
function faultsOf({ from, text, html, autoSubmitted, attachments, pictures, weight }: Mail, studio: string): string[] {
	const targets = new Set([...html.matchAll(/href="([^"]*)"/g)].map(([, href = '']) => href.replaceAll('&amp;', '&')))
	const [only = '', ...more] = targets
	const images = html.match(/<img[^>]*>/g) ?? []
	const covers = images.filter((img) => img.includes('.cover@'))
	const designs = images.filter((img) => !covers.includes(img))
	const shown = [...html.matchAll(/<img[^>]* src="([^"]*)"/g)].map(([, src]) => src)
	const rules: readonly (readonly [fault: string, isSo: boolean])[] = [
		['not from the studio by name', from !== studio],
		['not marked as sent by a machine', autoSubmitted !== 'auto-generated'],
		['no text', text.trim() === ''],
		['no language in the HTML', !/<html[^>]* lang="en"/.test(html)],
		['too heavy', Buffer.byteLength(html) + Buffer.byteLength(text) > most.words || weight > most.whole],
		['something attached that is no picture', attachments > 0],
		['other pictures than came with it', shown.join() !== pictures.map((cid) => `cid:${cid}`).join()],
		['a design without words', designs.some((img) => !/ alt="[^"]{80,}"/.test(img))],
		['a cover without words', covers.some((img) => !/ alt="Winter [\d–]+\. [^"]{12,}"/.test(img))],
		['a script', /<script|javascript:|\son\w+=/i.test(html)],
		['something to fetch', /<(link|iframe|video)\b|url\(|src="(?!cid:)/i.test(html)],
		['not exactly one thing to open', only === '' || more.length > 0],
		['the text lacks the link', !text.split(/\s/).includes(only)],
		['a link that a mail reader may break', only.length > 200],
	]
	return rules.filter(([, isSo]) => isSo).map(([fault]) => fault)
}

test('every mail can be read as text and as a page, and leads to one place', async ({
	as,
	visit,
	cast,
	mailbox,
	site,
}) => {
	test.slow()
	const { proposals, people, clients } = cast
	const stucco = await as('stuccoApprover', phone)
	await stucco.goto(`/proposal/${proposals.stucco}/change`)
	await stucco.getByLabel('The whole design').fill('A little less violet, please.')
	await stucco.getByRole('button', { name: 'Ask for this change' }).click()
	await expect(stucco.getByRole('heading', { name: 'We have your wishes.' })).toBeVisible()
	const bakery = await as('bakeryApprover', phone)
	await bakery.goto(`/proposal/${proposals.bakery}/approve`)
	await bakery.getByRole('button', { name: 'Approve this design' }).click()
	await expect(bakery.getByRole('heading', { name: 'Approved. Thank you.' })).toBeVisible()
	const dental = await as('dentalApprover', phone)
	await dental.goto(`/proposal/${proposals.dental}/skip`)
	await dental.getByRole('button', { name: 'Skip this season' }).click()
	await expect(dental.getByRole('heading', { name: 'Skipped for this season.' })).toBeVisible()

	const designer = await as('designer', laptop)
	await designer.goto(`/studio/proposal/${proposals.stucco}`)
	await designer.getByRole('button', { name: 'Publish to the client' }).click()
	await designer.getByRole('button', { name: 'Publish', exact: true }).click()
	await expect(designer.getByText('Published. The client’s contacts hear of it by mail.')).toBeVisible()
	await designer.goto('/studio')
	await rowOf(designer, clients.vet.name)
		.getByRole('button', { name: /^Remind/ })
		.click()
	await rowOf(designer, clients.vet.name)
		.getByRole('button', { name: /^Remind again/ })
		.click()
	const guest = await visit(phone)
	await guest.goto('/sign-in')
	await guest.getByLabel('Mail address').fill(people.innApprover.address)
	await guest.getByRole('button', { name: 'Send me the link' }).click()

	for (const after of [0, 1]) await signInBy(await visit(phone), mailbox, people.vetApprover.address, after)
	await designer.goto(`/studio/clients/${clients.creditUnion.id}`)
	const { name } = people.creditUnionApprover
	await designer.getByText(`Change the address… of ${name}`).click()
	await designer.getByLabel(`New mail address of ${name}`).fill('wilma@elsewhere.example')
	await designer.getByRole('button', { name: 'Change the address' }).filter({ visible: true }).click()
	await expect(designer.getByText('The old address is told.')).toBeVisible()

	for (const [kind, to, subject, pictures] of kinds) {
		const mail = await mailbox.next(people[to].address, subject)
		expect.soft(faultsOf(mail, cast.studio.name), kind).toEqual([])
		expect.soft(new URL(linkIn(mail)).origin, kind).toBe(site.url)
		expect.soft(mail.pictures.length, kind).toBe(pictures)
		expect.soft(mail.text, kind).toContain(`Dear ${people[to].name},`)
	}
	await expect.poll(() => mailsToSend(site)).toBe(0)
	const ids = mailbox.mails.map(({ id }) => id)
	expect(new Set(ids).size).toBe(ids.length)
	expect(mailbox.mails.filter((mail) => faultsOf(mail, cast.studio.name).length > 0)).toEqual([])
})
