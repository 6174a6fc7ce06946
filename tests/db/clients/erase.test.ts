import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { eraseClient } from '@/db/clients/erase'
import { listClients } from '@/db/clients/list-clients'
import { clientPage } from '@/db/clients/read-clients'
import { saveClient } from '@/db/clients/save-client'
import { inviteContact } from '@/db/clients/save-contact'
import { saveContainer } from '@/db/clients/save-container'
import { addSiteColours, savePlace } from '@/db/clients/save-place'
import { leaseMail } from '@/db/outbox/lease'
import { approve } from '@/db/proposals/answers/approve'
import { askForChange } from '@/db/proposals/answers/ask-for-change'
import { readOffer } from '@/db/proposals/read-offer'
import { steer } from '@/db/proposals/steer'
import { verify } from '@/db/record/verify'
import { sessionAdapter } from '@/db/sign-in/adapter'
import { askForLink } from '@/db/sign-in/ask'
import { personOfSession } from '@/db/sign-in/session'
import { keepToken } from '@/db/sign-in/token'
import { seasonPage } from '@/db/studio/season-page'
import { keysOf } from '@/demo/play/keys'
import { must } from '@/demo/play/must'
import { sha256 } from '@/lib/record/hash'
import { addDays, day } from '@/lib/units/day'
import { hex } from '@/lib/units/hex'
import { id } from '@/lib/units/id'
import { stepsOf } from '../proposals/steps'
import { changesOf, refused } from '../stage/rows'
import { fillDisk, found, stranger, studio, today } from '../stage/studio'

const of = studio()
const { answering, idOf, page, publish, redraft } = stepsOf(of)

const erase = async (who: Parameters<typeof of.as>[0] = 'designer', client = of.cast().clients.bakery.id) =>
	eraseClient(await of.as(who), client, of.stamp())

/** Every field that takes words is given what it is, and this. */
const told = (what: string) => `Erase-me ${what}!`

async function tellEverything(): Promise<void> {
	const [designer, client] = [await of.as('designer'), of.cast().clients.bakery.id]
	const { client: row, places } = found(await clientPage(designer, client))
	const [place] = places
	const [pot] = found(place).containers
	const { containers: _, colours: __, ...at } = found(place)
	const exempt = { exemptCertificate: told('certificate'), exemptExpires: day('2027-08-31') }
	must(
		'client',
		await saveClient(designer, client, { ...row, name: told('name'), studioNote: told('note'), ...exempt }, of.stamp()),
	)
	must(
		'contact',
		await inviteContact(
			designer,
			{ client, name: told('contact'), address: 'erase-me@marrowbybakery.example', may: 'look' },
			of.stamp(),
		),
	)
	must(
		'place',
		await savePlace(
			designer,
			{ client, place: at.id },
			{ ...at, name: told('place'), address: told('address'), accessNote: told('access') },
			of.stamp(),
		),
	)
	must(
		'colour',
		await addSiteColours(
			designer,
			{ client, place: at.id },
			[{ name: told('colour'), hex: hex('#b5653a'), side: 'inside' }],
			of.stamp(),
		),
	)
	must(
		'pot',
		await saveContainer(
			designer,
			{ client, place: at.id, container: found(pot).id },
			{ ...found(pot), name: told('container') },
			of.stamp(),
		),
	)
	await redraft('bakery', (draft) => ({
		...draft,
		title: told('title'),
		letter: told('letter'),
		answerBy: addDays(today, 5),
		options: draft.options.map((option) => ({
			...option,
			name: told('palette'),
			palette: option.palette.map((chip) => ({ ...chip, name: told('chip'), echoes: told('echo') })),
		})),
		extras: draft.extras.map((extra) => ({ ...extra, name: told('extra'), words: told('extra words') })),
	}))
	await publish('bakery')
	const notes = [{ part: 'whole', words: told('asked') }]
	must(
		'change',
		await askForChange(
			await of.as('bakeryApprover'),
			{ ...(await answering('bakery')), notes, browser: told('browser') },
			of.stamp(),
		),
	)
	await publish('bakery')
	const yes = { option: 'a', places: {}, extras: [], leftOut: [], purchaseOrder: told('order') }
	must('yes', await approve(await of.as('bakeryApprover'), { ...(await answering('bakery')), ...yes }, of.stamp()))
	must(
		'reason',
		await steer(
			designer,
			{ proposal: idOf('bakery'), step: 'cancel', reason: told('reason'), once: of.once() },
			of.stamp(),
		),
	)
	await askForLink({ address: 'erase-me@marrowbybakery.example', askHash: sha256('ask'), to: '/home' }, of.stamp())
}

const fields = [
	...['access', 'address', 'asked', 'browser', 'certificate', 'chip', 'colour', 'contact', 'container', 'echo'],
	...['extra', 'extra words', 'letter', 'name', 'note', 'order', 'palette', 'place', 'reason', 'title'],
]
	.map(told)
	.concat('erase-me@')

/** What of it can still be read in the studio's file, its log and its index. */
function left(...words: readonly string[]): string[] {
	stranger(of.folder(), (sqlite) => {
		sqlite.pragma('wal_checkpoint(TRUNCATE)')
	})
	const files = readdirSync(of.folder()).filter((name) => name.startsWith('studio.db'))
	const bytes = files.map((name) => readFileSync(join(of.folder(), name)).toString('latin1')).join('\n')
	return [
		...new Set([...bytes.matchAll(/erase-me( [a-z ]+!|@)/gi)].map(([all]) => all)),
		...words.filter((word) => bytes.includes(word)),
	]
}

describe('the words of a client', () => {
	test('are nowhere in the file any more', async () => {
		const { bakeryApprover, bakerySecondApprover, bakeryViewer } = of.cast().people
		const people = [bakeryApprover, bakerySecondApprover, bakeryViewer].flatMap(({ name, address }) => [name, address])
		const words = [
			...people,
			'Chandlers Row',
			'Loading from Salt Steps',
			'Your baking pans are what one sees',
			'the ovens are loud',
		]
		expect(left(...words)).toEqual(words)
		await tellEverything()
		expect(left().toSorted()).toEqual(fields.toSorted())
		must('erase', await erase())
		expect(left(...words)).toEqual([])
	})

	test('are gone from every page, and what was done and when stays', async () => {
		const before = await page('bakery')
		must('erase', await erase())
		const designer = await of.as('designer')
		const state = { is: 'withdrawn', revision: before.hash }
		expect(await readOffer(designer, idOf('bakery'), of.stamp())).toEqual({ ...before, state, offer: undefined })
		expect((await listClients(designer)).map(({ id: each }) => each)).not.toContain(of.cast().clients.bakery.id)
		expect(await clientPage(designer, of.cast().clients.bakery.id)).toMatchObject({
			client: { name: 'erased', studioNote: '', exemptCertificate: null, archivedAt: of.cast().now },
			contacts: [],
			places: [{ name: 'erased', address: 'erased', accessNote: '' }],
		})
		const ledger = await seasonPage(designer, { season: of.cast().seasons.winter, page: 1 }, of.stamp())
		expect(ledger?.rows.find(({ id: each }) => each === idOf('bakery'))).toMatchObject({ name: 'erased', note: '' })
	})

	test('of an answer are gone, and its reference, its hash and its total stay', async () => {
		const before = (await page('creditUnion')).answer
		must('erase', await erase('designer', of.cast().clients.creditUnion.id))
		expect((await page('creditUnion')).answer).toEqual({ ...before, words: undefined })
	})

	test('are counted as erased, those of each line and of each revision, and the chain is whole', async () => {
		const lines = stranger(of.folder(), (sqlite) =>
			sqlite
				.prepare('SELECT count(*) FROM event WHERE client_id = ? AND (sealed IS NOT NULL OR act = ?)')
				.pluck()
				.get(of.cast().clients.inn.id, 'proposal published'),
		)
		const before = found(await verify(await of.as('designer')))
		must('erase', await erase('designer', of.cast().clients.inn.id))
		expect(await verify(await of.as('designer'))).toMatchObject({
			broken: null,
			erased: lines,
			lines: before.lines + 2,
		})
		expect(lines).toBe(4)
	})
})

describe('others', () => {
	const everythingElse = async () => {
		const designer = await of.as('designer')
		const { clients, proposals, autumn } = of.cast()
		const keys = keysOf(clients).filter((key) => key !== 'bakery')
		const pages = await Promise.all(keys.map((key) => clientPage(designer, clients[key].id)))
		const offers = [...keysOf(proposals), ...keysOf(autumn)].filter((key) => key !== 'bakery')
		const read = await Promise.all(offers.map((key) => readOffer(designer, proposals[key], of.stamp())))
		return [pages, read]
	}

	test('are as they were', async () => {
		const before = await everythingElse()
		const { did } = await changesOf(of.folder(), () => erase())
		expect(await everythingElse()).toEqual(before)
		expect(did).toEqual({
			client: '~1',
			contact: '~3',
			container: '~3',
			draft: '~2',
			erasure: '+1',
			event: '+2',
			outbox: '~3',
			person: '~3',
			photo: '-3',
			place: '~1',
			proposal: '~2',
			sealed_text: '-5',
			site_colour: '~3',
			visit: '~2',
		})
	})

	test('a contact of two clients keeps name, session and the other door', async () => {
		const { id: hester, name, address } = of.cast().people.twoDoors
		const adapter = sessionAdapter(() => new Date(of.cast().now))
		await adapter.createSession({ sessionToken: 'hers', userId: hester })
		must('erase', await erase('designer', of.cast().clients.vet.id))
		expect(await of.as('twoDoors')).toMatchObject({
			is: 'contact',
			clients: new Map([[of.cast().clients.fieldstone.id, 'look']]),
		})
		expect(await personOfSession('hers', new Date(of.cast().now))).toBe(hester)
		const { contacts } = found(await clientPage(await of.as('designer'), of.cast().clients.fieldstone.id))
		expect(contacts).toContainEqual(expect.objectContaining({ name, address }))
	})
})

describe('whoever came in at that door', () => {
	test('is out at once: no session, no link, no mail', async () => {
		const { bakeryApprover } = of.cast().people
		const [now, hashes] = [
			new Date(of.cast().now),
			{ linkHash: sha256('l'), codeHash: sha256('c'), askHash: sha256('a') },
		]
		await sessionAdapter(() => now).createSession({ sessionToken: 'theirs', userId: bakeryApprover.id })
		await keepToken(bakeryApprover.id, hashes, now)
		const { did } = await changesOf(of.folder(), () => erase())
		expect(did).toMatchObject({ session: '-1', sign_in_token: '-1' })
		expect(await personOfSession('theirs', now)).toBeUndefined()
		expect(await of.as('bakeryApprover')).toEqual({ is: 'nobody' })
		const due = await leaseMail(await of.as('system'), 100, of.stamp())
		expect(due.filter(({ person }) => person === bakeryApprover.id)).toEqual([])
		expect(due).toHaveLength(9)
	})
})

describe('is refused, and nothing is written', () => {
	test.each(['helper', 'bakeryApprover', 'dentalApprover', 'nobody', 'system'] as const)('to %s', async (who) => {
		expect(await refused(of.folder(), () => erase(who))).toEqual({ ok: false, why: 'hidden' })
	})

	test('of a client who is not there', async () => {
		const none = id<'client'>('01999999-0000-7000-8000-00000000000a')
		expect(await refused(of.folder(), () => erase('designer', none))).toEqual({ ok: false, why: 'hidden' })
	})

	test.each(['erasure', 'event'])('when %s cannot be written', async (table) => {
		fillDisk(of.folder(), table)
		await refused(of.folder(), () => expect(erase()).rejects.toThrow('the disk is full'))
	})
})
