import { describe, expect, test } from 'vitest'
import { agreeToRecords } from '@/db/agreements/signing/consent'
import { declineAgreement } from '@/db/agreements/signing/decline'
import { signAgreement } from '@/db/agreements/signing/sign'
import { maySign } from '@/db/agreements/signing/step'
import { approve } from '@/db/proposals/answers/approve'
import { must } from '@/demo/play/must'
import type { AnyPersonKey } from '@/demo/play/stage'
import { signatureSchema } from '@/lib/agreement/signing/signature'
import type { Stroke } from '@/lib/agreement/signing/stroke'
import { hash } from '@/lib/record/hash'
import { stepsOf } from '../proposals/steps'
import { signingOf } from '../stage/agreement'
import { changesOf, refused } from '../stage/rows'
import { fillDisk, found, later, stranger, studio } from '../stage/studio'

const of = studio()
const { amend, begin, consenting, issued, open, page, ready, session, sign, signing } = signingOf(of)
const { answering } = stepsOf(of)

const hour = 3_600_000
const hew = 'bakerySecondApprover'
const maud = 'bakeryApprover'
const sealedUnder = (table: string) =>
	stranger(of.folder(), (sqlite) => {
		const sql = `SELECT s.body FROM ${table} t JOIN sealed_text s ON s.hash = t.words ORDER BY t.at DESC, t.rowid DESC`
		return JSON.parse(found(sqlite.prepare<[], string>(sql).pluck().get()))
	})

describe('an opening', () => {
	test('is kept once for each way and person, the first notes that it was seen', async () => {
		const id = await issued('bakery')
		const { did } = await changesOf(of.folder(), () => open(id, maud))
		expect(did).toEqual({ agreement: '~1', agreement_opening: '+1', event: '+1' })
		await refused(of.folder(), () => open(id, maud))
		expect((await changesOf(of.folder(), () => open(id, maud, 'PDF'))).did).toEqual({
			...{ agreement_opening: '+1', event: '+1' },
		})
		expect((await page(id, maud)).opened).toEqual([
			{ as: 'page', at: of.cast().now },
			{ as: 'PDF', at: of.cast().now },
		])
		expect((await page(id, hew)).opened).toEqual([])
	})

	test.each(['designer', 'helper', 'bakeryViewer', 'dentalApprover'] as const)('of %s is none', async (who) => {
		const id = await issued('bakery')
		await refused(of.folder(), () => open(id, who))
	})

	test('of what is signed is none', async () => {
		const id = await issued('bakery')
		must('sign', await sign(maud, await ready(id, maud)))
		await refused(of.folder(), () => open(id, hew))
	})
})

describe('agreeing to records on a screen', () => {
	const by = async (who: AnyPersonKey, given: Awaited<ReturnType<typeof consenting>>) =>
		agreeToRecords(await of.as(who), given, of.stamp())

	test('seals the words that were shown, once', async () => {
		const id = await issued('bakery')
		await open(id, maud)
		const given = await consenting(id)
		const { said, did } = await changesOf(of.folder(), () => by(maud, given))
		expect(said).toEqual({ ok: true })
		expect(did).toEqual({ agreement_consent: '+1', event: '+1', once: '+1', sealed_text: '+1' })
		expect(JSON.stringify(sealedUnder('agreement_consent'))).toContain('studio@localhost.example')
		expect(await refused(of.folder(), () => by(maud, given))).toEqual({ ok: true })
	})

	test('is refused before it was opened by the same person', async () => {
		const id = await issued('bakery')
		await open(id, hew)
		const given = await consenting(id)
		expect(await refused(of.folder(), () => by(maud, given))).toEqual({ ok: false, why: 'not opened' })
	})

	test('is refused to other words, and to a text that was amended', async () => {
		const id = await issued('bakery')
		await open(id, maud)
		const given = await consenting(id)
		const other = { ...given, words: hash('e'.repeat(64)) }
		expect(await refused(of.folder(), () => by(maud, other))).toEqual({ ok: false, why: 'other words' })
		await amend(id, 'bakery')
		expect(await refused(of.folder(), () => by(maud, given))).toEqual({ ok: false, why: 'a newer document stands' })
	})
})

describe('a signature', () => {
	test('is one row, its words, a line and a mail to each side; the agreement holds, and its visits are there to be planned', async () => {
		const id = await issued('bakery')
		const stroke: Stroke = [
			[
				[0, 0],
				[9, 9],
			],
		]
		const given = { ...(await ready(id, maud)), stroke }
		const { said, did } = await changesOf(of.folder(), () => sign(maud, given))
		expect(said).toEqual({ ok: true, number: 1 })
		expect(did).toEqual({
			...{ agreement: '~1', agreement_signature: '+1', event: '+3' },
			...{ once: '+1', outbox: '+3', sealed_text: '+1', visit: '+2' },
		})
		const { state, signatures } = await page(id, maud)
		expect(state).toEqual({ is: 'signed', issued: given.document, inForce: given.document })
		expect(signatures).toContainEqual({
			...{ side: 'client', at: of.cast().now, name: 'Maud Marrowby', isOnPaper: false },
		})
		expect(signatureSchema.parse(sealedUnder('agreement_signature'))).toMatchObject({
			...{ is: 'on a screen', typedName: 'Maud Marrowby', stroke: given.stroke, sender: '198.51.100.7' },
			proven: { address: 'maud@marrowbybakery.example', by: 'link' },
			opened: [{ as: 'page' }],
		})
	})

	test('of two at once one wins, and the other is told', async () => {
		const id = await issued('bakery')
		const [mine, theirs] = [await ready(id, maud), await ready(id, hew)]
		must('sign', await sign(hew, theirs))
		expect(await refused(of.folder(), () => sign(maud, mine))).toEqual({ ok: false, why: 'already signed' })
	})

	test('of a text amended since is refused; of the amended one, agreed to anew, it is taken', async () => {
		const id = await issued('bakery')
		const stale = await ready(id, maud)
		await amend(id, 'bakery')
		expect(await refused(of.folder(), () => sign(maud, stale))).toEqual({ ok: false, why: 'a newer document stands' })
		const { hash: newer, changes } = await page(id, maud)
		expect(changes.map(({ of: field }) => field)).toEqual(['Clause “The law that holds”'])
		const hasty = { ...stale, document: newer }
		expect(await refused(of.folder(), () => sign(maud, hasty))).toEqual({ ok: false, why: 'not agreed to' })
		must('sign', await sign(maud, await ready(id, maud)))
		expect((await page(id)).state).toMatchObject({ is: 'signed', inForce: newer })
	})

	test('needs that person’s own consent', async () => {
		const id = await issued('bakery')
		await ready(id, hew)
		await open(id, maud)
		const mine = await signing(id, maud)
		expect(await refused(of.folder(), () => sign(maud, mine))).toEqual({ ok: false, why: 'not agreed to' })
	})

	test('needs a proof less than a day old, of the same person', async () => {
		const id = await issued('bakery')
		const mine = await ready(id, maud)
		const old = { ok: false, why: 'proof is old' }
		const day = later(of.cast().now, 24 * hour)
		expect(await refused(of.folder(), () => sign(maud, mine, day))).toEqual(old)
		const theirs = { ...mine, token: await session(hew) }
		expect(await refused(of.folder(), () => sign(maud, theirs))).toEqual(old)
		stranger(of.folder(), (sqlite) => sqlite.exec('UPDATE session SET proven_by = NULL'))
		expect(await refused(of.folder(), () => sign(maud, mine))).toEqual(old)
		const fresh = { ...mine, token: await session(maud, later(of.cast().now, hour), 'code') }
		expect(await sign(maud, fresh, later(day, hour - 1))).toEqual({ ok: true, number: 1 })
	})

	test('is refused while another agreement prices the same season', async () => {
		const [first, second] = [await issued('bakery'), await issued('bakery')]
		must('sign', await sign(maud, await ready(first, maud)))
		const again = await ready(second, maud)
		expect(await refused(of.folder(), () => sign(maud, again))).toEqual({ ok: false, why: 'billed twice' })
		const nextYear = await issued('bakery', (terms) => ({
			...terms,
			seasons: terms.seasons.map((season) => ({ ...season, year: season.year + 1 })),
		}))
		must('sign', await sign(maud, await ready(nextYear, maud)))
	})

	test('is refused while an approved proposal asks for a season that it prices', async () => {
		const id = await issued('bakery')
		const mine = await ready(id, maud)
		const approval = { option: 'a', places: {}, extras: [], leftOut: [], purchaseOrder: '' }
		must('approve', await approve(await of.as(maud), { ...(await answering('bakery')), ...approval }, of.stamp()))
		expect(await refused(of.folder(), () => sign(maud, mine))).toEqual({ ok: false, why: 'billed twice' })
	})

	test('by a form that went through before changes nothing', async () => {
		const [first, second] = [
			await issued('bakery'),
			await issued('bakery', (terms) => ({
				...terms,
				seasons: terms.seasons.map((season) => ({ ...season, year: season.year + 1 })),
			})),
		]
		const given = await ready(first, maud)
		must('sign', await sign(maud, given))
		const replayed = { ...(await ready(second, maud)), once: given.once }
		expect(await refused(of.folder(), () => sign(maud, replayed))).toEqual({ ok: false, why: 'sent before' })
	})

	test.each([
		['designer', 'forbidden'],
		['bakeryViewer', 'forbidden'],
		['helper', 'hidden'],
		['dentalApprover', 'hidden'],
	] as const)('of %s is %s', async (who, why) => {
		const id = await issued('bakery')
		const mine = await ready(id, maud)
		expect(await refused(of.folder(), async () => signAgreement(await of.as(who), mine, of.stamp()))).toEqual({
			...{ ok: false, why },
		})
		expect(await maySign(await of.as(who), id, of.stamp())).toEqual({ ok: false, why })
	})

	test('is not half kept when its mail cannot be', async () => {
		const id = await issued('bakery')
		const mine = await ready(id, maud)
		fillDisk(of.folder(), 'outbox')
		await refused(of.folder(), () => expect(sign(maud, mine)).rejects.toThrow('the disk is full'))
	})

	test('is of nothing before it is issued', async () => {
		const id = await begin('bakery')
		expect(await maySign(await of.as(maud), id, of.stamp())).toEqual({ ok: false, why: 'hidden' })
	})
})

describe('declining', () => {
	const decline = async (who: AnyPersonKey, id: Awaited<ReturnType<typeof issued>>) => {
		const declining = { agreement: id, document: (await page(id)).hash, once: of.once(), browser: 'a browser' }
		return declineAgreement(await of.as(who), { ...declining, reason: 'We are closing the shop.' }, of.stamp())
	}

	test('seals the reason and tells the studio; nothing can be signed after it', async () => {
		const id = await issued('bakery')
		const mine = await ready(id, maud)
		const { said, did } = await changesOf(of.folder(), () => decline(hew, id))
		expect(said).toEqual({ ok: true })
		expect(did).toEqual({ agreement: '~1', event: '+1', once: '+1', outbox: '+1', sealed_text: '+1' })
		expect(await refused(of.folder(), () => sign(maud, mine))).toEqual({ ok: false, why: 'declined' })
	})

	test('of an amendment leaves the one before in force', async () => {
		const id = await issued('bakery')
		const first = await ready(id, maud)
		must('sign', await sign(maud, first))
		await amend(id, 'bakery')
		must('decline', await decline(maud, id))
		expect((await page(id, maud)).state).toMatchObject({ is: 'declined', inForce: first.document })
	})

	test('is not for one who may look', async () => {
		const id = await issued('bakery')
		expect(await refused(of.folder(), () => decline('bakeryViewer', id))).toEqual({ ok: false, why: 'forbidden' })
	})
})

describe('who may only look reads it without an amount', () => {
	test('in no clause, no season and no change', async () => {
		const id = await issued('clapboard')
		const { document, maySign: may } = await page(id, 'clapboardViewer')
		expect(document).toMatchObject({ money: null, leftOut: 2 })
		expect(may).toBe(false)
		expect(JSON.stringify(document)).not.toMatch(/\$|612|384|61250|38401/)
		expect((await page(id, 'clapboardApprover')).document).toMatchObject({ leftOut: 0, money: { totalCents: 99_651 } })
	})
})
