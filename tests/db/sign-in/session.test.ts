import { describe, expect, test } from 'vitest'
import { clientPage } from '@/db/clients/read-clients'
import { endContact } from '@/db/clients/save-contact'
import { sideFile } from '@/db/house/side-file'
import { sessionAdapter } from '@/db/sign-in/adapter'
import { endSession, personOfSession, sweepSignIn } from '@/db/sign-in/session'
import { keepToken } from '@/db/sign-in/token'
import { must } from '@/demo/play/must'
import type { AnyPersonKey } from '@/demo/play/stage'
import { sha256 } from '@/lib/record/hash'
import { changesOf, refused } from '../stage/rows'
import { found, studio } from '../stage/studio'

const of = studio()
const minute = 60_000
const hour = 60 * minute
const day = 24 * hour
const at = (ms = 0) => new Date(Date.parse(of.cast().now) + ms)
const adapter = (ms = 0) => sessionAdapter(() => at(ms))
const idOf = (who: AnyPersonKey) => of.cast().people[who].id

const begin = (who: AnyPersonKey, token = 'a session') =>
	adapter().createSession({ sessionToken: token, userId: idOf(who) })
const whose = (ms: number, token = 'a session') => personOfSession(token, at(ms))

/** Comes back every `every` until `until`, as somebody does who uses the site all the time. */
async function use(every: number, until: number): Promise<void> {
	for (let ms = every; ms <= until; ms += every) await whose(ms)
}

describe('a session', () => {
	test('is one row, under the hash of its token', async () => {
		const { said, did } = await changesOf(of.folder(), () => begin('bakeryApprover'))
		expect(did).toEqual({ session: '+1' })
		expect(said).toEqual({ sessionToken: 'a session', userId: idOf('bakeryApprover'), expires: at(30 * day) })
		expect(await whose(0)).toBe(idOf('bakeryApprover'))
	})

	test('is nobody’s under another token, or under its hash', async () => {
		await begin('bakeryApprover')
		for (const token of ['another', '', sha256('a session')]) expect(await whose(0, token)).toBeUndefined()
	})

	test.each([
		['designer', 12 * hour],
		['helper', 12 * hour],
		['bakeryApprover', 14 * day],
		['bakeryViewer', 14 * day],
	] as const)('of %s is over when nobody used it for %i ms', async (who, idle) => {
		await begin(who)
		expect(await whose(idle)).toBe(idOf(who))
		// That look was a use.
		expect(await whose(2 * idle)).toBe(idOf(who))
		expect(await whose(3 * idle + 1)).toBeUndefined()
	})

	test.each([
		['designer', 7 * day, 11 * hour],
		['helper', 7 * day, 11 * hour],
		['bakeryApprover', 30 * day, 13 * day],
		['twoDoors', 30 * day, 13 * day],
	] as const)('of %s is over after %i ms, however much it was used', async (who, longest, every) => {
		await begin(who)
		await use(every, longest - 1)
		expect(await whose(longest - 1)).toBe(idOf(who))
		expect(await whose(longest)).toBeUndefined()
	})

	test('is not prolonged by the library', async () => {
		await begin('bakeryApprover')
		expect(await adapter(day).updateSession()).toBeNull()
		expect(await adapter(30 * day - 1).getSessionAndUser('a session')).toMatchObject({
			session: { expires: at(30 * day) },
		})
		expect(await adapter(30 * day).getSessionAndUser('a session')).toBeNull()
	})

	test('notes its use at most once a minute, and in the side file alone', async () => {
		await begin('bakeryApprover')
		const noted = () => sideFile().prepare('SELECT at FROM activity').pluck().all()
		await refused(of.folder(), () => whose(minute))
		expect(noted()).toEqual([])
		await refused(of.folder(), () => whose(minute + 1))
		await whose(2 * minute)
		expect(noted()).toEqual([at(minute + 1).toISOString()])
	})
})

describe('is over at once', () => {
	test('when it is ended, by us or by the library; another of the same person is not', async () => {
		await begin('bakeryApprover', 'on the phone')
		await begin('bakeryApprover', 'at the till')
		await begin('bakeryApprover', 'at home')
		await endSession('on the phone')
		await adapter().deleteSession('at the till')
		expect([await whose(1, 'on the phone'), await whose(1, 'at the till')]).toEqual([undefined, undefined])
		expect(await whose(1, 'at home')).toBe(idOf('bakeryApprover'))
		expect(await adapter().getSessionAndUser('on the phone')).toBeNull()
	})

	test('when the contact is ended', async () => {
		const designer = await of.as('designer')
		const { bakery } = of.cast().clients
		await begin('bakeryApprover', 'on the phone')
		await begin('bakeryViewer', 'hers')
		const { contacts } = found(await clientPage(designer, bakery.id))
		const contact = found(contacts.find(({ name }) => name === of.cast().people.bakeryApprover.name))
		must('end', await endContact(designer, { client: bakery.id, contact: contact.id }, of.stamp()))
		expect(await whose(1, 'on the phone')).toBeUndefined()
		expect(await whose(1, 'hers')).toBe(idOf('bakeryViewer'))
		expect(await of.as('bakeryApprover')).toEqual({ is: 'nobody' })
	})
})

describe('what the library may not do', () => {
	test('make people', async () => {
		await refused(of.folder(), () => expect(adapter().createUser()).rejects.toThrow('Nobody is made by signing in.'))
	})

	test('give a session to nobody', async () => {
		const nobody = '01999999-0000-7000-8000-00000000000a'
		await refused(of.folder(), () =>
			expect(adapter().createSession({ sessionToken: 't', userId: nobody })).rejects.toThrow('FOREIGN KEY'),
		)
	})
})

describe('the sweep', () => {
	test('takes what is over and leaves the rest', async () => {
		await begin('designer', 'the designer’s')
		await begin('bakeryApprover', 'the baker’s')
		const hashes = { linkHash: sha256('l'), codeHash: sha256('c'), askHash: sha256('a') }
		await keepToken(idOf('bakeryViewer'), hashes, at())
		await refused(of.folder(), () => sweepSignIn(at(10 * minute - 1)))
		expect((await changesOf(of.folder(), () => sweepSignIn(at(10 * minute)))).did).toEqual({ sign_in_token: '-1' })
		expect((await changesOf(of.folder(), () => sweepSignIn(at(7 * day)))).did).toEqual({ session: '-1' })
		expect(await whose(7 * day, 'the baker’s')).toBe(idOf('bakeryApprover'))
	})
})
