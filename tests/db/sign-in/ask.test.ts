import { describe, expect, test, vi } from 'vitest'
import { eraseClient } from '@/db/clients/erase'
import { clientPage } from '@/db/clients/read-clients'
import { endContact, inviteContact } from '@/db/clients/save-contact'
import { leaseMail } from '@/db/outbox/lease'
import { addressee, mailedProposal } from '@/db/outbox/mail-facts'
import { publish } from '@/db/proposals/publish'
import { remind } from '@/db/proposals/remind'
import { addressOfHandle, askForLink } from '@/db/sign-in/ask'
import type { ClientKey } from '@/demo/cast/clients'
import { must } from '@/demo/play/must'
import type { AnyPersonKey } from '@/demo/play/stage'
import { sha256 } from '@/lib/record/hash'
import { stepsOf } from '../proposals/steps'
import { changesOf } from '../stage/rows'
import { found, stranger, studio } from '../stage/studio'

const of = studio()
const { draft, idOf } = stepsOf(of)

const askHash = sha256('a browser')
const ask = (address: string) => askForLink({ address, askHash, to: '/home' }, of.stamp())
const personAsked = async (address: string) => {
	await ask(address)
	const row = stranger(of.folder(), (sqlite) =>
		sqlite
			.prepare<[], { person: string | null }>(
				"SELECT person_id AS person FROM outbox WHERE message = 'sign-in link' ORDER BY id DESC",
			)
			.get(),
	)
	return found(row).person
}

async function end(client: ClientKey, who: AnyPersonKey): Promise<void> {
	const [designer, owner] = [await of.as('designer'), of.cast().clients[client].id]
	const { contacts } = found(await clientPage(designer, owner))
	const contact = found(contacts.find(({ address }) => address === of.cast().people[who].address))
	must(who, await endContact(designer, { client: owner, contact: contact.id }, of.stamp()))
}

describe('a link asked for', () => {
	test('writes the same row, known or not, but for whom it names', async () => {
		const known = await changesOf(of.folder(), () => ask(of.cast().people.bakeryApprover.address))
		const unknown = await changesOf(of.folder(), () => ask('nobody@marrowbybakery.example'))
		expect([known.did, unknown.did]).toEqual([{ outbox: '+1' }, { outbox: '+1' }])
		expect([known.said, unknown.said]).toEqual([undefined, undefined])
		const [first, second] = stranger(of.folder(), (sqlite) =>
			sqlite
				.prepare<[], { id: string; person_id: string | null }>(
					"SELECT * FROM outbox WHERE message = 'sign-in link' ORDER BY id",
				)
				.all(),
		)
		const { id: _, person_id: person, ...same } = found(first)
		const { id: __, person_id: nobody, ...asWell } = found(second)
		expect(asWell).toEqual(same)
		expect(same).toMatchObject({ facts: JSON.stringify({ askHash, to: '/home' }), sent_at: null, dropped_at: null })
		expect([person, nobody]).toEqual([of.cast().people.bakeryApprover.id, null])
	})

	test('asks the database as much, known or not', async () => {
		const asked = async (address: string) => {
			const prepare = vi.spyOn(found(globalThis.doorsillDatabase).sqlite, 'prepare')
			await ask(address)
			const calls = prepare.mock.calls.map(([sql]) => sql)
			prepare.mockRestore()
			return calls
		}
		const known = await asked(of.cast().people.bakeryApprover.address)
		expect(known).toHaveLength(2)
		expect(await asked('nobody@marrowbybakery.example')).toEqual(known)
	})

	test.each(['designer', 'helper', 'bakeryViewer', 'twoDoors'] as const)('by %s is theirs', async (who) => {
		expect(await personAsked(of.cast().people[who].address)).toBe(of.cast().people[who].id)
	})

	test('by a contact whose one door was closed is nobody’s; whose other is open, is theirs', async () => {
		await end('vet', 'twoDoors')
		expect(await personAsked(of.cast().people.twoDoors.address)).toBe(of.cast().people.twoDoors.id)
		await end('fieldstone', 'twoDoors')
		expect(await personAsked(of.cast().people.twoDoors.address)).toBeNull()
	})

	test('by a contact who was let in again is theirs', async () => {
		const { name, address, id } = of.cast().people.bakeryViewer
		await end('bakery', 'bakeryViewer')
		const again = { client: of.cast().clients.bakery.id, name, address, may: 'approve' } as const
		must('again', await inviteContact(await of.as('designer'), again, of.stamp()))
		expect(await personAsked(address)).toBe(id)
	})

	test('by staff who left is nobody’s', async () => {
		stranger(of.folder(), (sqlite) =>
			sqlite
				.prepare('UPDATE staff SET ended_at = ? WHERE person_id = ?')
				.run(of.cast().now, of.cast().people.helper.id),
		)
		expect(await personAsked(of.cast().people.helper.address)).toBeNull()
		expect(await of.as('helper')).toEqual({ is: 'nobody' })
	})

	test('by who was erased is nobody’s, by address and by the handle of an old mail', async () => {
		const { address, id } = of.cast().people.stuccoApprover
		const handle = stranger(of.folder(), (sqlite) =>
			found(sqlite.prepare<[string], string>('SELECT handle FROM person WHERE id = ?').pluck().get(id)),
		)
		must('erase', await eraseClient(await of.as('designer'), of.cast().clients.stucco.id, of.stamp()))
		expect(await personAsked(address)).toBeNull()
		expect(await addressOfHandle(handle)).toBeUndefined()
		expect(await personAsked(`${id}@erased.invalid`)).toBeNull()
	})
})

describe('a contact whose door was closed gets no mail', () => {
	test('of what comes after', async () => {
		const system = await of.as('system')
		await leaseMail(system, 1000, of.stamp())
		await end('vet', 'vetApprover')
		const designer = await of.as('designer')
		must('remind', await remind(designer, { proposal: idOf('vet'), again: true, once: of.once() }, of.stamp()))
		const { version } = await draft('vet')
		must('publish', await publish(designer, { proposal: idOf('vet'), version, once: of.once() }, of.stamp()))
		const due = await leaseMail(system, 1000, of.stamp())
		const { twoDoors } = of.cast().people
		expect(due.map(({ message, person }) => [message, person])).toEqual([
			['reminder', twoDoors.id],
			['proposal published', twoDoors.id],
		])
	})

	test('of what lay ready before: it has no addressee and no offer any more', async () => {
		const system = await of.as('system')
		const { id: person } = of.cast().people.vetApprover
		const about = { proposal: idOf('vet'), number: 1, person }
		expect(await addressee(system, person)).toBeDefined()
		expect(await mailedProposal(system, about, of.stamp())).toMatchObject({ mayApprove: true })
		await end('vet', 'vetApprover')
		expect(await addressee(system, person)).toBeUndefined()
		expect(await mailedProposal(system, about, of.stamp())).toBeUndefined()
	})

	test('of this client, while the other door stays open', async () => {
		const system = await of.as('system')
		const { id: person } = of.cast().people.twoDoors
		await end('vet', 'twoDoors')
		expect(await addressee(system, person)).toBeDefined()
		expect(await mailedProposal(system, { proposal: idOf('vet'), number: 1, person }, of.stamp())).toBeUndefined()
		expect(await mailedProposal(system, { proposal: idOf('fieldstone'), number: 1, person }, of.stamp())).toMatchObject(
			{
				mayApprove: false,
			},
		)
	})
})
