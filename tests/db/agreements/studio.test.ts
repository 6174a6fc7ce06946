import { existsSync, readdirSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { endAgreement, endingOutlook, takeBackAgreement } from '@/db/agreements/studio/end'
import { agreementsToSign, listAgreements } from '@/db/agreements/studio/list'
import { readScan, recordPaper } from '@/db/agreements/studio/paper'
import { agreementDesk } from '@/db/agreements/studio/read-desk'
import { remindSigner, remindSigners } from '@/db/agreements/studio/remind'
import { endingIn, renewAgreement } from '@/db/agreements/studio/renew'
import { eraseClient } from '@/db/clients/erase'
import { visitsAt } from '@/db/clients/visits/read-visits'
import { remindSignersDue } from '@/db/house/remind-signers-due'
import { beginProposal } from '@/db/proposals/begin'
import { readDraft } from '@/db/proposals/draft'
import { verify } from '@/db/record/verify'
import { planSeason } from '@/db/studio/seasons'
import type { ClientKey } from '@/demo/cast/clients'
import { must } from '@/demo/play/must'
import type { Renewal } from '@/lib/agreement/renewal/renewed'
import { signatureSchema } from '@/lib/agreement/signing/signature'
import { sha256 } from '@/lib/record/hash'
import { cents } from '@/lib/units/cents'
import { day, type Moment } from '@/lib/units/day'
import { changesOf, refused } from '../stage/rows'
import { fillDisk, found, later, stranger, studio, utc } from '../stage/studio'
import { type AgreementId, agreementsOf } from './steps'

const of = studio()
const { begun, issue, issued, save, termsFor } = agreementsOf(of)
const scan = Buffer.from('a picture of a page')
const hour = 3_600_000

const paper = async (agreement: AgreementId, document: ReturnType<typeof sha256>, change = {}, at?: Moment) =>
	recordPaper(
		await of.as('designer'),
		{ agreement, document, signer: 'Rowan Kittiwell', signedOn: day('2026-10-06'), scan, once: of.once(), ...change },
		of.stamp(at),
	)
async function signed(client: ClientKey, terms?: Awaited<ReturnType<typeof termsFor>>) {
	const { agreement, hash } = await issued(client, terms)
	must('paper', await paper(agreement, hash))
	return { agreement, hash }
}
const remindIt = async (agreement: AgreementId, again = false, at?: Moment) =>
	remindSigner(await of.as('designer'), { agreement, again, once: of.once() }, of.stamp(at))
const stateOf = async (agreement: AgreementId) =>
	found(await agreementDesk(await of.as('designer'), agreement, of.stamp())).row.state.is
const mails = (message: string) =>
	stranger(of.folder(), (sqlite) =>
		Number(sqlite.prepare('SELECT count(*) FROM outbox WHERE message = ? AND dropped_at IS NULL').pluck().get(message)),
	)

describe('the list of a year', () => {
	test('holds what holds in it, and what is being written', async () => {
		const [out, writing] = [await issued('vet'), await begun('bakery')]
		const ids = async (year?: number) =>
			found(await listAgreements(await of.as('designer'), year, of.stamp())).rows.map(({ id }) => id)
		expect((await ids()).toSorted()).toEqual([out.agreement, writing].toSorted())
		expect(await ids(2029)).toEqual([writing])
	})

	test('of the present year holds what waits for a signature, whichever year it is for', async () => {
		const terms = await termsFor('vet')
		const { agreement, hash } = await issued('vet', { ...terms, from: day('2027-11-01'), to: day('2028-10-31') })
		const ids = async (year?: number) =>
			found(await listAgreements(await of.as('designer'), year, of.stamp())).rows.map(({ id }) => id)
		expect(await agreementsToSign(await of.as('designer'), of.stamp())).toBe(1)
		expect([await ids(), await ids(2026), await ids(2027), await ids(2025)]).toEqual([
			[agreement],
			[agreement],
			[agreement],
			[],
		])
		must('paper', await paper(agreement, hash))
		expect([await ids(), await ids(2027)]).toEqual([[], [agreement]])
	})

	test('leaves out who was erased', async () => {
		await issued('vet')
		await eraseClient(await of.as('designer'), of.cast().clients.vet.id, of.stamp())
		expect(found(await listAgreements(await of.as('designer'), undefined, of.stamp())).rows).toEqual([])
		expect(await agreementsToSign(await of.as('designer'), of.stamp())).toBe(0)
	})
})

describe('reminding who has to sign', () => {
	test('writes a line and a mail to each who may sign, and within two days only with a second word', async () => {
		const { agreement } = await issued('vet')
		const { said, did } = await changesOf(of.folder(), () => remindIt(agreement))
		expect([said, did]).toEqual([{ ok: true }, { agreement: '~1', event: '+1', once: '+1', outbox: '+2' }])
		expect(await refused(of.folder(), () => remindIt(agreement))).toMatchObject({ why: 'reminded lately' })
		expect(await remindIt(agreement, true)).toEqual({ ok: true })
		expect(mails('agreement reminder')).toBe(2)
	})

	test('not one that waits for nobody', async () => {
		const writing = await begun('vet')
		expect(await refused(of.folder(), () => remindIt(writing))).toEqual({ ok: false, why: 'not waiting for them' })
	})

	test('all that wait, once for a form', async () => {
		const [vet] = [await issued('vet'), await issued('bakery')]
		await remindIt(vet.agreement)
		const asked = { again: false, once: of.once() }
		const all = async () => remindSigners(await of.as('designer'), asked, of.stamp())
		expect(await all()).toEqual({ ok: true, reminded: 1, lately: 1 })
		expect(await refused(of.folder(), all)).toMatchObject({ reminded: 0 })
	})
})

describe('reminders by themselves', () => {
	const due = async (at: Moment) => remindSignersDue(await of.as('system'), of.stamp(at))

	test('seven days before the day to sign by, once, in waking hours of the studio', async () => {
		await issued('vet', undefined, day('2026-10-30'))
		expect(await due(utc('2026-10-22T16:00'))).toBe(0)
		expect(await due(utc('2026-10-23T11:00'))).toBe(0)
		expect(await due(utc('2026-10-23T16:00'))).toBe(1)
		expect(await due(utc('2026-10-23T19:00'))).toBe(0)
	})

	test('after a time without the house the latest alone, and none after the day', async () => {
		await issued('vet', undefined, day('2026-10-30'))
		expect(await due(utc('2026-10-29T16:00'))).toBe(1)
		expect(mails('agreement reminder')).toBe(2)
		expect(await due(utc('2026-10-31T16:00'))).toBe(0)
	})

	test('none of one that was signed', async () => {
		await signed('vet')
		expect(await due(utc('2026-10-29T16:00'))).toBe(0)
	})
})

describe('a signature on paper', () => {
	test('is kept as the studio’s word with its picture, and never as given on a screen', async () => {
		const { agreement, hash } = await issued('vet')
		const { said, did } = await changesOf(of.folder(), () => paper(agreement, hash))
		expect(said).toEqual({ ok: true, number: 1 })
		expect(did).toMatchObject({ agreement: '~1', agreement_signature: '+1', sealed_text: '+1', outbox: '+3' })
		const body = stranger(of.folder(), (sqlite) =>
			String(
				sqlite
					.prepare("SELECT body FROM sealed_text JOIN agreement_signature ON words = hash WHERE side = 'client'")
					.pluck()
					.get(),
			),
		)
		expect(signatureSchema.parse(JSON.parse(body))).toMatchObject({
			...{ is: 'on paper', signer: 'Rowan Kittiwell', signedOn: '2026-10-06', scan: sha256(scan) },
			recordedBy: of.cast().people.designer.id,
		})
		const read = await readScan(await of.as('designer'), { agreement, document: hash }, of.stamp())
		expect(Buffer.from(found(read))).toEqual(scan)
		expect(await verify(await of.as('designer'))).toMatchObject({ broken: null })
	})

	test('plans the visits that it includes, no visit twice', async () => {
		const { agreement } = await signed('vet')
		const visits = async () =>
			(await visitsAt(await of.as('designer'), of.cast().clients.vet.id)).filter(({ state }) => state === 'to plan')
		expect((await visits()).map(({ kind }) => kind).toSorted()).toEqual(['check', 'check', 'install', 'take-down'])
		const terms = await termsFor('vet')
		await save(agreement, { ...terms, said: { ...terms.said, law: 'the State of Westmere' } })
		const again = must('again', await issue(agreement))
		must('paper', await paper(agreement, again.hash))
		expect(await visits()).toHaveLength(4)
	})

	test.each([
		['of a day to come', { signedOn: day('2026-10-07') }, 'still to come'],
		['of a day before it was issued', { signedOn: day('2026-10-05') }, 'before it was issued'],
		['of another document', { document: sha256('another') }, 'a newer document stands'],
	])('not %s', async (_, change, why) => {
		const { agreement, hash } = await issued('vet')
		expect(await refused(of.folder(), () => paper(agreement, hash, change))).toEqual({ ok: false, why })
	})

	test('not a second time, and nothing when the disk is full', async () => {
		const { agreement, hash } = await issued('vet')
		fillDisk(of.folder(), 'agreement_signature')
		await refused(of.folder(), () => expect(paper(agreement, hash)).rejects.toThrow('the disk is full'))
		stranger(of.folder(), (sqlite) => sqlite.exec('DROP TRIGGER full'))
		must('paper', await paper(agreement, hash))
		expect(await refused(of.folder(), () => paper(agreement, hash))).toEqual({ ok: false, why: 'already signed' })
	})

	test('its picture goes with an erasure', async () => {
		await signed('vet')
		const folder = join(of.folder(), 'scans')
		expect(readdirSync(folder)).toHaveLength(1)
		must('erase', await eraseClient(await of.as('designer'), of.cast().clients.vet.id, of.stamp()))
		expect(existsSync(folder) ? readdirSync(folder) : []).toEqual([])
		expect(await verify(await of.as('designer'))).toMatchObject({ broken: null })
	})
})

describe('ending', () => {
	const ending = { on: day('2027-05-31'), saidOn: day('2026-10-06'), by: 'client', reason: 'They move away.' } as const
	const end = async (agreement: AgreementId, change = {}) =>
		endAgreement(await of.as('designer'), { agreement, ending: { ...ending, ...change }, once: of.once() }, of.stamp())
	const takeBack = async (agreement: AgreementId) =>
		takeBackAgreement(await of.as('designer'), { agreement, once: of.once() }, of.stamp())

	test('takes back what nobody signed', async () => {
		const { agreement } = await issued('vet')
		expect([await takeBack(agreement), await stateOf(agreement)]).toEqual([{ ok: true }, 'ended'])
		expect(mails('agreement taken back')).toBe(2)
		expect(await refused(of.folder(), () => takeBack(agreement))).toEqual({ ok: false, why: 'ended' })
	})

	test('not what holds: that is ended on a day, with its reason', async () => {
		const { agreement } = await signed('vet')
		expect(await refused(of.folder(), () => takeBack(agreement))).toEqual({ ok: false, why: 'already signed' })
		expect(await end(agreement)).toEqual({ ok: true })
		const desk = found(await agreementDesk(await of.as('designer'), agreement, of.stamp()))
		expect([desk.row.state.is, desk.row.holdsUntil, desk.ending]).toEqual(['ended', '2027-05-31', ending])
	})

	test.each([
		['before it begins', { on: day('2026-11-30') }],
		['over by then', { on: day('2027-11-30') }],
		['said in days to come', { saidOn: day('2026-10-07') }],
	])('not %s', async (why, change) => {
		const { agreement } = await signed('vet')
		expect(await refused(of.folder(), () => end(agreement, change))).toEqual({ ok: false, why })
	})

	test('shows first what remains due', async () => {
		const { agreement } = await signed('vet')
		const says = await endingOutlook(await of.as('designer'), agreement, ending, of.stamp())
		// 1,455.00 in four: 363.75 each, on 1 December and 1 March until the end of May.
		expect(found(says).join(' ')).toContain(
			'Until then $727.50 before tax falls due in 2 instalments; $0.00 was paid, so $727.50 remains due.',
		)
	})
})

describe('renewing', () => {
	const renewal: Renewal = { rise: { is: 'percent', percent: 4 }, stepCents: 500, adjusted: [] }
	const renew = async (agreement: AgreementId, change = {}) =>
		renewAgreement(
			await of.as('designer'),
			{ agreement, renewal, signBy: day('2026-10-30'), once: of.once(), ...change },
			of.stamp(),
		)
	const rows = async () => found(await endingIn(await of.as('designer'), 2027, () => renewal, of.stamp())).endings

	test('shows old beside new, and issues the next year’s once', async () => {
		const { agreement } = await signed('vet')
		const [row] = await rows()
		expect(found(row).next.total).toEqual({ was: 145_500, is: 151_500, difference: 6000 })
		const { did } = await changesOf(of.folder(), async () => must('renew', await renew(agreement)))
		expect(did).toMatchObject({ agreement: '+1', agreement_document: '+1', agreement_draft: '+1', outbox: '+2' })
		expect(await refused(of.folder(), () => renew(agreement))).toEqual({ ok: false, why: 'renewed before' })
		expect(found((await rows())[0]).renewedBy).not.toBeNull()
	})

	test('shows the margin of what was approved, and what it would be at the new price', async () => {
		await signed('vet')
		expect(found((await rows())[0]).margins).toEqual([null, null, null])
		stranger(of.folder(), (sqlite) =>
			sqlite
				.prepare("UPDATE proposal SET state = 'approved', value_cents = 84000, margin_tenths = 450 WHERE id = ?")
				.run(of.cast().proposals.vet),
		)
		const [row] = await rows()
		const [winter] = found(row).next.seasons
		expect(winter).toMatchObject({ was: 84_000, is: 87_500 })
		// 840.00 at 45 % cost 462.00: 1 − 462 ÷ 875 = 47.2 %
		expect(found(row).margins).toEqual([{ was: 45, is: 47.2 }, null, null])
	})

	test('takes a single price as it was typed', async () => {
		const { agreement } = await signed('vet')
		const adjusted = [{ season: { quarter: 'winter', year: 2027 } as const, cents: cents(91_111) }]
		must('renew', await renew(agreement, { renewal: { ...renewal, adjusted } }))
		const total = stranger(of.folder(), (sqlite) =>
			sqlite.prepare('SELECT total_cents FROM agreement WHERE renews = ?').pluck().get(agreement),
		)
		expect(total).toBe(91_111 + 64_000)
	})

	test('one that cannot be issued is not begun either', async () => {
		const { agreement } = await signed('vet')
		const free: Renewal = { ...renewal, rise: { is: 'percent', percent: -100 } }
		expect(await refused(of.folder(), () => renew(agreement, { renewal: free }))).toMatchObject({ why: 'not ready' })
		const over = { signBy: day('2026-10-05') }
		expect(await refused(of.folder(), () => renew(agreement, over))).toMatchObject({ why: 'not ready' })
	})

	test('not one that nobody signed', async () => {
		const { agreement } = await issued('vet')
		expect(await rows()).toEqual([])
		expect(await refused(of.folder(), () => renew(agreement))).toEqual({ ok: false, why: 'nothing to end' })
	})
})

describe('a season’s price flows into a new proposal', () => {
	const spring = {
		quarter: 'spring',
		year: 2027,
		windowFrom: day('2027-04-12'),
		windowTo: day('2027-04-23'),
		answerBy: day('2027-03-19'),
	} as const
	const summer = { ...spring, quarter: 'summer', windowFrom: day('2027-06-07'), windowTo: day('2027-06-18') } as const
	const agreedIn = async (season: typeof spring | typeof summer) => {
		const designer = await of.as('designer')
		const { id } = must('season', await planSeason(designer, season, of.stamp()))
		const where = { client: of.cast().clients.vet.id, season: id }
		const proposal = must('begin', await beginProposal(designer, where, of.stamp(later(of.cast().now, hour)))).id
		return found(await readDraft(designer, proposal, of.stamp())).draft.agreement
	}

	test('when the agreement fixes it, for the containers that it names', async () => {
		await signed('vet')
		const terms = await termsFor('vet')
		expect(await agreedIn(spring)).toEqual({ is: 'fixed', cents: 61_500, containers: terms.seasons[1]?.containers })
	})

	test('not when it is quoted', async () => {
		await signed('vet')
		expect(await agreedIn(summer)).toEqual({ is: 'none' })
	})

	test('not before both have signed', async () => {
		await issued('vet')
		expect(await agreedIn(spring)).toEqual({ is: 'none' })
	})
})

describe('a season that is planned after the signing', () => {
	const spring = {
		quarter: 'spring',
		...{ year: 2027, answerBy: day('2027-03-19') },
		...{ windowFrom: day('2027-04-12'), windowTo: day('2027-04-23') },
	} as const
	const plan = async (change = {}) =>
		changesOf(of.folder(), async () =>
			must('season', await planSeason(await of.as('designer'), { ...spring, ...change }, of.stamp())),
		)
	const planned = { season: '+1', visit: '+1', event: '+2' }
	const none = { season: '+1', event: '+1' }

	test('has the visits that are agreed for it, of whoever signed and of nobody else', async () => {
		await signed('vet')
		await issued('bakery')
		expect((await plan()).did).toEqual(planned)
		const kinds = stranger(of.folder(), (sqlite) =>
			sqlite
				.prepare(
					"SELECT visit.kind, visit.client_id AS client FROM visit JOIN season ON season.id = season_id WHERE quarter = 'spring'",
				)
				.all(),
		)
		expect(kinds).toEqual([{ kind: 'install', client: of.cast().clients.vet.id }])
		expect(found(await verify(await of.as('designer'))).broken).toBeNull()
	})

	test('has none where the agreement says nothing of it, or ends before', async () => {
		await signed('vet')
		expect((await plan({ year: 2028 })).did).toEqual(none)
		const late = { windowFrom: day('2027-12-01'), windowTo: day('2027-12-05') }
		expect((await plan(late)).did).toEqual(none)
	})

	test('has none of a client who was erased', async () => {
		await signed('vet')
		await eraseClient(await of.as('designer'), of.cast().clients.vet.id, of.stamp())
		expect((await plan()).did).toEqual(none)
	})
})
