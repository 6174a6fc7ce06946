import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { listAgreements } from '@/db/agreements/studio/list'
import { readAccount } from '@/db/money/read-account'
import { readInvoice } from '@/db/money/read-invoice'
import { readMoney } from '@/db/money/read-money'
import { leaseMail } from '@/db/outbox/lease'
import { verify } from '@/db/record/verify'
import { viewerOf } from '@/db/viewer'
import type { ClientKey } from '@/demo/cast/clients'
import { must } from '@/demo/play/must'
import type { Seeded } from '@/demo/seed'
import type { Viewer } from '@/lib/access/viewer'
import { day } from '@/lib/units/day'
import { found, type Played, played, rowsIn } from './stage'

const today = day('2026-10-06')
/** To play it, more than once. */
const playedMs = 60_000

let of: Played
let cast: Seeded
let designer: Viewer

beforeAll(async () => {
	of = await played(today, false, true)
	cast = of.cast
	designer = await viewerOf(cast.people.designer.id)
}, playedMs)
afterAll(() => of.end())

const now = () => ({ at: cast.now })
const accountOf = async (key: ClientKey) => must(key, await readAccount(designer, cast.clients[key].id, now()))
const openOf = async (key: ClientKey) =>
	(await accountOf(key)).account.invoices.map(({ cents, paidCents }) =>
		paidCents === 0 ? 'open' : paidCents < cents ? 'in part' : 'paid',
	)

describe('the agreements of the cast', () => {
	test.each([
		[
			2026,
			[
				['inn', 'signed'],
				['bakery', 'to be signed'],
			],
		],
		[
			2027,
			[
				['inn', 'signed'],
				['dental', 'declined'],
				['bakery', 'to be signed'],
			],
		],
	] as const)('on the list of %i', async (year, expected) => {
		const { rows } = found(await listAgreements(designer, year, now()))
		expect(rows.map(({ client, state }) => [client, state.is])).toEqual(
			expected.map(([key, state]) => [cast.clients[key].id, state]),
		)
	})
})

describe('the money of the cast', () => {
	test('the inn paid two instalments, a part of the third, and is late with that and the fourth', async () => {
		expect(await openOf('inn')).toEqual(['paid', 'paid', 'in part', 'open'])
		const { late } = found(await readMoney(designer, now()))
		expect(late.clients[0]).toMatchObject({ client: cast.clients.inn.id, invoices: [{}, {}] })
	})

	test('the Brackwaters paid a deposit and a balance, and the deposit of the winter', async () => {
		expect(await openOf('approved')).toEqual(['paid', 'paid', 'paid'])
		const { bills } = await accountOf('approved')
		expect(bills.map(({ bill }) => bill.part.is)).toEqual(['deposit', 'balance', 'deposit', 'balance'])
	})

	test('the credit union’s invoice bears its purchase-order number and its certificate, and is paid', async () => {
		const { account } = await accountOf('creditUnion')
		const [{ number } = { number: '' }] = account.invoices
		const page = must('invoice', await readInvoice(designer, number))
		expect(page.invoice).toMatchObject({ purchaseOrder: 'PO-3102', exemptCertificate: 'EX-40217-W' })
		expect(page.standing.openCents).toBe(0)
	})
})

describe('played with agreements and money', () => {
	test('the record holds from the first line to the last, and nobody is left signed in', async () => {
		expect(found(await verify(designer)).broken).toBeNull()
		expect(rowsIn(of.folder).session).toEqual([])
	})

	test('leaves to the sender what asks for a signature', async () => {
		const due = await leaseMail(await viewerOf('system'), 1000, now())
		const asks = due.filter(({ message }) => message !== 'proposal published')
		expect(asks.map(({ message, person }) => [message, person]).toSorted()).toEqual(
			[cast.people.bakeryApprover.id, cast.people.bakerySecondApprover.id]
				.map((id) => ['agreement issued', id])
				.toSorted(),
		)
	})
})

describe('with agreements and money', () => {
	test('the same day gives the same rows, byte for byte', { timeout: 4 * playedMs }, async () => {
		const rows = async () => {
			const { folder, end } = await played(day('2026-12-31'), false, true)
			const all = rowsIn(folder)
			end()
			return all
		}
		const first = await rows()
		expect(first.agreement_signature).toHaveLength(4)
		expect(await rows()).toEqual(first)
	})

	test('it can be played at the end of May, in the year after that of the winter', { timeout: playedMs }, async () => {
		const { folder, end } = await played(day('2027-05-31'), false, true)
		const invoices = rowsIn(folder).invoice ?? []
		end()
		expect(invoices.length).toBeGreaterThan(20)
	})
})
