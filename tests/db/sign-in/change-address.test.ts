import { describe, expect, test } from 'vitest'
import { eraseClient } from '@/db/clients/erase'
import { clientPage } from '@/db/clients/read-clients'
import { endContact } from '@/db/clients/save-contact'
import { leaseMail, settleMail } from '@/db/outbox/lease'
import { verify } from '@/db/record/verify'
import { sessionAdapter } from '@/db/sign-in/adapter'
import { addressOfHandle, askForLink } from '@/db/sign-in/ask'
import { changeAddress } from '@/db/sign-in/change-address'
import { personOfSession } from '@/db/sign-in/session'
import { holderOfLink, keepToken } from '@/db/sign-in/token'
import type { ClientKey } from '@/demo/cast/clients'
import { must } from '@/demo/play/must'
import type { AnyPersonKey } from '@/demo/play/stage'
import { sha256 } from '@/lib/record/hash'
import { id } from '@/lib/units/id'
import { changesOf, refused } from '../stage/rows'
import { fillDisk, found, stranger, studio } from '../stage/studio'

const of = studio()
const at = () => new Date(of.cast().now)
const fresh = 'maud@elsewhere.example'
const none = '01999999-0000-7000-8000-00000000000a'
const maud = () => of.cast().people.bakeryApprover

async function contactOf(client: ClientKey, who: AnyPersonKey) {
	const page = found(await clientPage(await of.as('designer'), of.cast().clients[client].id))
	return found(page.contacts.find(({ address }) => address === of.cast().people[who].address)).id
}

async function change(address: string, { client = 'bakery', who = 'bakeryApprover' }: Whose = {}) {
	const contact = await contactOf(client, who)
	return changeAddress(await of.as('designer'), { client: of.cast().clients[client].id, contact, address }, of.stamp())
}
type Whose = { readonly client?: ClientKey; readonly who?: AnyPersonKey }

const signIn = (token: string, who: AnyPersonKey) =>
	sessionAdapter(at).createSession({ sessionToken: token, userId: of.cast().people[who].id })
const hashes = (of: string) => ({ linkHash: sha256(`link ${of}`), codeHash: sha256('code'), askHash: sha256(of) })
const row = <T>(sql: string) => stranger(of.folder(), (sqlite) => found(sqlite.prepare<[], T>(sql).get()))

describe('a contact’s address', () => {
	test('changed, is the person’s, with the line of the record and the mail to the old one', async () => {
		const contact = await contactOf('bakery', 'bakeryApprover')
		const what = { client: of.cast().clients.bakery.id, contact, address: fresh }
		const viewer = await of.as('designer')
		const { said, did } = await changesOf(of.folder(), () => changeAddress(viewer, what, of.stamp()))
		expect([said, did]).toEqual([{ ok: true }, { person: '~1', event: '+1', outbox: '+1' }])
		const page = found(await clientPage(viewer, what.client))
		expect(page.contacts).toContainEqual(expect.objectContaining({ id: contact, name: maud().name, address: fresh }))
		const line = { actor: `staff ${of.cast().people.designer.id}`, object: `person ${maud().id}`, facts: '{}' }
		const client = of.cast().clients.bakery.id
		expect(row('SELECT actor, object, facts, client_id AS client FROM event ORDER BY seq DESC')).toEqual({
			...line,
			client,
		})
		expect(row('SELECT message, person_id AS person, facts FROM outbox ORDER BY id DESC')).toEqual({
			message: 'address changed',
			person: maud().id,
			facts: JSON.stringify({ address: maud().address, at: of.cast().now }),
		})
		expect(await verify(viewer)).toMatchObject({ broken: null })
	})

	test('changed, ends sessions, links and codes, and those on their way; nobody else’s', async () => {
		await signIn('hers', 'bakeryApprover')
		await signIn('another', 'bakeryViewer')
		await keepToken(maud().id, hashes('her browser'), at())
		await keepToken(of.cast().people.bakeryViewer.id, hashes('another'), at())
		for (const { address } of [maud(), of.cast().people.bakeryViewer])
			await askForLink({ address, askHash: sha256('a browser'), to: '/' }, of.stamp())
		must('change', await change(fresh))
		expect(await personOfSession('hers', at())).toBeUndefined()
		expect(await personOfSession('another', at())).toBe(of.cast().people.bakeryViewer.id)
		expect(await holderOfLink(hashes('her browser').linkHash, at())).toBeUndefined()
		expect(await holderOfLink(hashes('another').linkHash, at())).toBeDefined()
		const due = await leaseMail(await of.as('system'), 1000, of.stamp())
		const links = due.filter(({ message }) => message === 'sign-in link').map(({ person }) => person)
		expect(links).toEqual([of.cast().people.bakeryViewer.id])
	})

	test('changed while a link is on its way to the old one: that link opens nothing', async () => {
		const address = maud().address
		must('change', await change(fresh))
		const late = { ...hashes('late'), address }
		expect(await refused(of.folder(), () => keepToken(maud().id, late, at()))).toBe(false)
		expect(await keepToken(maud().id, { ...late, address: fresh }, at())).toBe(true)
	})

	test('changed, old mails stand for nobody and the new address asks for links', async () => {
		const handle = () => row<{ handle: string }>(`SELECT handle FROM person WHERE id = '${maud().id}'`).handle
		const old = handle()
		must('change', await change(fresh))
		expect([await addressOfHandle(old), await addressOfHandle(handle())]).toEqual([undefined, fresh])
	})

	test('is one at every door of theirs', async () => {
		must('change', await change('hester@elsewhere.example', { client: 'vet', who: 'twoDoors' }))
		const page = found(await clientPage(await of.as('designer'), of.cast().clients.fieldstone.id))
		expect(page.contacts.map(({ address }) => address)).toContain('hester@elsewhere.example')
		expect(await of.as('twoDoors')).toMatchObject({ clients: expect.objectContaining({ size: 2 }) })
	})

	test.each([
		['their own', 'bakeryApprover', 'themselves'],
		['of another contact here', 'bakeryViewer', 'a contact here'],
		['of another client’s contact', 'dentalApprover', 'somebody else'],
		['of the helper', 'helper', 'staff'],
	] as const)('%s is refused by name, and nothing is lost', async (_, who, is) => {
		const { address, name } = of.cast().people[who]
		const said = { ok: false, why: 'taken', by: name, who: is }
		expect(await refused(of.folder(), () => change(address))).toEqual(said)
	})

	test('of one to whom the door was closed is somebody else’s still', async () => {
		const contact = await contactOf('bakery', 'bakeryViewer')
		const client = of.cast().clients.bakery.id
		must('end', await endContact(await of.as('designer'), { client, contact }, of.stamp()))
		expect(await change(of.cast().people.bakeryViewer.address)).toMatchObject({ who: 'somebody else' })
		const viewer = await of.as('designer')
		const theirs = () => changeAddress(viewer, { client, contact, address: fresh }, of.stamp())
		expect(await refused(of.folder(), theirs)).toEqual({ ok: false, why: 'hidden' })
	})

	test('is changed at their own client’s page alone', async () => {
		const viewer = await of.as('designer')
		const contact = await contactOf('dental', 'dentalApprover')
		for (const wrong of [
			{ client: of.cast().clients.bakery.id, contact },
			{ client: id<'client'>(none), contact },
			{ client: of.cast().clients.bakery.id, contact: id<'contact'>(none) },
		]) {
			const ask = () => changeAddress(viewer, { ...wrong, address: fresh }, of.stamp())
			expect(await refused(of.folder(), ask)).toEqual({ ok: false, why: 'hidden' })
		}
	})

	test('stays, with every session, when the mail cannot be written', async () => {
		await signIn('hers', 'bakeryApprover')
		fillDisk(of.folder(), 'outbox')
		await refused(of.folder(), () => expect(change(fresh)).rejects.toThrow('the disk is full'))
		expect(await personOfSession('hers', at())).toBe(maud().id)
	})
})

describe('the old address', () => {
	const kept = () => row<{ facts: string }>("SELECT facts FROM outbox WHERE message = 'address changed'").facts
	const leased = async () => {
		const due = await leaseMail(await of.as('system'), 1000, of.stamp())
		return found(due.find(({ message }) => message === 'address changed'))
	}

	test.each(['sent', 'dropped', 'lost'] as const)('is kept until the mail to it is %s', async (outcome) => {
		must('change', await change(fresh))
		const mail = await leased()
		await settleMail(await of.as('system'), mail, 'failed', of.stamp())
		expect(kept()).toContain(maud().address)
		await settleMail(await of.as('system'), mail, outcome, of.stamp())
		expect(kept()).toBe(JSON.stringify({ at: of.cast().now }))
	})

	test('goes when the client is erased before it is told', async () => {
		must('change', await change(fresh))
		must('erase', await eraseClient(await of.as('designer'), of.cast().clients.bakery.id, of.stamp()))
		expect(kept()).toBe('{}')
	})
})
