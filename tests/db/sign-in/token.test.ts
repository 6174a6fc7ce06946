import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { sessionAdapter } from '@/db/sign-in/adapter'
import { addressOfHandle, askForLink } from '@/db/sign-in/ask'
import { personOfSession } from '@/db/sign-in/session'
import { holderOfLink, keepToken, linkHashOf, personWith, tryCode } from '@/db/sign-in/token'
import type { AnyPersonKey } from '@/demo/play/stage'
import { sha256 } from '@/lib/record/hash'
import { id } from '@/lib/units/id'
import { changesOf, refused } from '../stage/rows'
import { stranger, studio } from '../stage/studio'

const of = studio()
const minute = 60_000
const at = (ms = 0) => new Date(Date.parse(of.cast().now) + ms)
const link = (words: string) => linkHashOf(`token ${words}`, 'the key of the house')
const code = (digits: string) => sha256(`code ${digits}`)
const browser = (cookie: string) => sha256(`ask ${cookie}`)

const idOf = (who: AnyPersonKey) => of.cast().people[who].id
type Mailed = { readonly who?: AnyPersonKey; readonly digits?: string; readonly by?: string }
const mail = (words: string, { who = 'bakeryApprover', digits = '40217733', by = 'phone' }: Mailed = {}) =>
	keepToken(idOf(who), { linkHash: link(words), codeHash: code(digits), askHash: browser(by) }, at())
const use = (words: string, ms = 0) => sessionAdapter(() => at(ms)).useVerificationToken({ token: link(words) })
const type = (digits: string, { by = 'phone', next = 'by code', ms = 0 } = {}) =>
	tryCode(browser(by), code(digits), link(next), at(ms))
const maud = () => of.cast().people.bakeryApprover.address

describe('a mailed link', () => {
	// FIPS 180-4: "abc" gives ba7816bf…; the library (next-auth 4) hashes the token with the secret set behind it.
	test('is hashed as the sign-in library hashes it', () => {
		expect(linkHashOf('a', 'bc')).toBe('ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad')
	})

	test('says whom it was mailed to and by which browser it was asked for; a look uses nothing up', async () => {
		await mail('first')
		for (const _ of ['once', 'again'])
			expect(await refused(of.folder(), () => holderOfLink(link('first'), at()))).toEqual({
				address: maud(),
				askHash: browser('phone'),
			})
		expect(await holderOfLink(link('guessed'), at())).toBeUndefined()
	})

	test('works once', async () => {
		await mail('first')
		const { did } = await changesOf(of.folder(), () => use('first'))
		expect(did).toEqual({ sign_in_token: '-1' })
		expect(await use('first')).toBeNull()
		expect(await holderOfLink(link('first'), at())).toBeUndefined()
	})

	test('gives the address that it was mailed to', async () => {
		await mail('first')
		expect(await use('first')).toMatchObject({ identifier: maud() })
	})

	test('is void once the same browser asked for a newer one; one to another person is not', async () => {
		await mail('hers', { who: 'dentalApprover', by: 'desk' })
		await mail('first')
		await mail('second', { digits: '55667788' })
		expect([await holderOfLink(link('first'), at()), await use('first')]).toEqual([undefined, null])
		expect(await type('40217733')).toBe('wrong')
		expect(await use('second')).not.toBeNull()
		expect(await use('hers')).not.toBeNull()
	})

	test('is not void for what a stranger asks for', async () => {
		await mail('first')
		for (const turn of [1, 2, 3, 4])
			await mail(`stranger ${turn}`, { digits: `0000000${turn}`, by: `stranger ${turn}` })
		expect(await holderOfLink(link('first'), at())).toEqual({ address: maud(), askHash: browser('phone') })
		expect(await type('40217733')).toBe('right')
		expect(await use('by code')).toMatchObject({ identifier: maud() })
		expect(await use('stranger 2')).toMatchObject({ identifier: maud() })
	})

	// NIST SP 800-63B has ten minutes for an out-of-band request.
	test.each([
		[10 * minute - 1, true],
		[10 * minute, false],
		[24 * 60 * minute, false],
	])('after %i ms: %s', async (ms, isGood) => {
		await mail('first')
		expect((await holderOfLink(link('first'), at(ms))) !== undefined).toBe(isGood)
		expect(await type('40217733', { ms })).toBe(isGood ? 'right' : 'over')
		expect((await use(isGood ? 'by code' : 'first', ms)) !== null).toBe(isGood)
	})

	test('that came too late is used up all the same', async () => {
		await mail('first')
		await use('first', 10 * minute)
		expect(await use('first')).toBeNull()
	})

	test('is minted for somebody', async () => {
		const nobody = id<'person'>('01999999-0000-7000-8000-00000000000a')
		const minted = { linkHash: link('x'), codeHash: code('1'), askHash: browser('x') }
		await expect(keepToken(nobody, minted, at())).rejects.toThrow('nobody has this id')
	})
})

describe('a code to type', () => {
	test('turns into another link, and that works once; the one in the mail is void', async () => {
		await mail('first')
		expect(await type('40217733')).toBe('right')
		expect(await use('first')).toBeNull()
		expect(await use('by code')).toMatchObject({ identifier: maud() })
		expect(await use('by code')).toBeNull()
	})

	test('is right once', async () => {
		await mail('first')
		await type('40217733')
		expect(await type('40217733', { next: 'again' })).toBe('over')
		expect(await use('again')).toBeNull()
		expect(await use('by code')).not.toBeNull()
	})

	test('is right at the fifth try', async () => {
		await mail('first')
		const said: string[] = []
		for (const digits of ['1', '2', '3', '4', '40217733']) said.push(await type(digits))
		expect(said).toEqual(['wrong', 'wrong', 'wrong', 'wrong', 'right'])
	})

	test('is over after five that were wrong, and so is the link beside it', async () => {
		await mail('first')
		const said: string[] = []
		for (const digits of ['1', '2', '3', '4', '5', '40217733']) said.push(await type(digits))
		expect(said).toEqual(['wrong', 'wrong', 'wrong', 'wrong', 'over', 'over'])
		expect(await holderOfLink(link('first'), at())).toBeUndefined()
		expect(await use('first')).toBeNull()
	})

	test('is nothing in another browser, and costs its owner no try there', async () => {
		await mail('first')
		for (const digits of ['40217733', '1', '2', '3', '4', '5'])
			expect(await refused(of.folder(), () => type(digits, { by: 'a stranger’s' }))).toBe('over')
		expect(await type('40217733')).toBe('right')
	})

	test('of two people who asked in one browser is the newer’s, and the link of each is still theirs', async () => {
		await mail('hers', { who: 'dentalApprover', digits: '11112222' })
		await keepToken(
			idOf('bakeryApprover'),
			{ linkHash: link('first'), codeHash: code('40217733'), askHash: browser('phone') },
			at(1),
		)
		expect(await type('11112222')).toBe('wrong')
		expect(await type('40217733')).toBe('right')
		expect(await use('hers')).toMatchObject({ identifier: of.cast().people.dentalApprover.address })
	})

	test('of two people who asked in two browsers is each their own', async () => {
		await mail('hers', { who: 'dentalApprover', by: 'desk' })
		await mail('first')
		expect(await type('40217733', { by: 'desk', next: 'at the desk' })).toBe('right')
		expect(await use('at the desk')).toMatchObject({ identifier: of.cast().people.dentalApprover.address })
	})
})

test('a handle and an address stand for one person', async () => {
	const handle = stranger(of.folder(), (sqlite) =>
		sqlite.prepare<[string], string>('SELECT handle FROM person WHERE id = ?').pluck().get(idOf('bakeryApprover')),
	)
	expect(await addressOfHandle(handle ?? '')).toBe(maud())
	expect(await addressOfHandle('nobody’s')).toBeUndefined()
	expect(await personWith(maud())).toBe(idOf('bakeryApprover'))
	expect(await personWith('nobody@marrowbybakery.example')).toBeUndefined()
})

// OWASP ASVS 5.0.0, V6.5.2: a token is stored as a hash alone.
test('no token, no code and no cookie lies in any column of either file, nor between them', async () => {
	const secrets = {
		token: 'token in clear 4f1d',
		digits: '90817263',
		cookie: 'cookie in clear 77aa',
		session: 'session in clear 09be',
		next: 'token by code in clear',
	}
	await askForLink({ address: maud(), askHash: browser(secrets.cookie), to: '/home' }, of.stamp())
	await mail(secrets.token, { digits: secrets.digits, by: secrets.cookie })
	await type('11111111', { by: secrets.cookie })
	await type(secrets.digits, { by: secrets.cookie, next: secrets.next })
	await use(secrets.next)
	await sessionAdapter(() => at()).createSession({ sessionToken: secrets.session, userId: idOf('bakeryApprover') })
	await personOfSession(secrets.session, at(5 * minute))
	const files = readdirSync(of.folder())
	expect(files.toSorted()).toEqual(expect.arrayContaining(['side.db', 'side.db-wal', 'studio.db', 'studio.db-wal']))
	const bytes = files.map((name) => readFileSync(join(of.folder(), name)).toString('latin1')).join('\n')
	expect(bytes).toContain(sha256(secrets.session))
	for (const secret of Object.values(secrets)) expect(bytes).not.toContain(secret)
})
