import fc from 'fast-check'
import { afterEach, describe, expect, test, vi } from 'vitest'
import { statementPdf } from '@/app/server/pdf/statement'
import type { Ledger } from '@/lib/money/ledger/entry'
import { statement } from '@/lib/money/statement/statement'
import { yearSpan } from '@/lib/money/statement/year'
import { entryInWords } from '@/lib/money/words/entry'
import { cents } from '@/lib/units/cents'
import { day } from '@/lib/units/day'
import { clientId, credited, invoiced, money, paid, refunded, undoing, writtenOff } from '../../../lib/money/sample'
import { hardNames } from '../hard-names'
import { qpdf } from '../seal/judges'
import { bare, pagesOf } from '../text'

/** The renderer says on the console what it could not lay out. */
const complaints = vi.spyOn(console, 'warn')
afterEach(() => {
	expect(complaints.mock.calls).toEqual([])
	complaints.mockClear()
})

const ledger: Ledger = [
	{ ...invoiced(1, '10-09', '10-09', 31_000), on: day('2025-12-02') },
	paid(2, '01-12', 12_000, 1),
	invoiced(3, '02-01', '03-03', 95_131),
	credited(4, '02-14', 3, 10_131),
	paid(5, '03-02', 120_000, null, 'bank transfer'),
	refunded(6, '03-09', 1_500),
	undoing(7, '03-10', 2),
	writtenOff(8, '12-31', 1, 500),
]
const account = (its: Partial<Parameters<typeof statementPdf>[0]> = {}) => ({
	...{ studio: 'Thornapple Studio', client: { id: clientId(1), name: 'Marrowby Bakery' } },
	...{ currency: 'USD', lengths: 'in' as const, ledger },
	...its,
})
const year = yearSpan(2026)
const pagesFor = async (of = account(), span = year) => pagesOf(await statementPdf(of, span))
const whole = async (...of: Parameters<typeof pagesFor>) => bare((await pagesFor(...of)).join(''))

describe('the file of a statement', () => {
	test('is the same bytes for the same account, and others for another year or on other paper', async () => {
		const first = await statementPdf(account(), year)
		expect((await statementPdf(account(), year)).equals(first)).toBe(true)
		expect((await statementPdf(account(), yearSpan(2025))).equals(first)).toBe(false)
		expect((await statementPdf(account({ lengths: 'cm' }), year)).equals(first)).toBe(false)
	})

	test('has a table of its objects that a strict reader finds nothing wrong with', async () => {
		expect(qpdf(await statementPdf(account(), year)).says).toContain('No syntax or stream encoding errors found')
	})

	test('says whose it is, what was owed before, each line with the balance after it, and what is owed', async () => {
		const text = await whole()
		for (const each of [
			...['Statement of 2026', 'Thornapple Studio', 'Marrowby Bakery', 'Before 1 January 2026: $310.00'],
			'12 January 2026 Payment by check, 1002, for invoice 2026-0001 $120.00 $190.00',
			'1 February 2026 Invoice 2026-0003, due 3 March 2026 $951.31 $1,141.31',
			'14 February 2026 Credit note C2026-0004 to invoice 2026-0003 $101.31 $1,040.00',
			'2 March 2026 Payment by bank transfer, 1005 $1,200.00 −$160.00',
			'9 March 2026 Refund by bank transfer $15.00 −$145.00',
			'$120.00 −$25.00',
			'Written off from invoice 2026-0001: shop closed for good $5.00 −$30.00',
			'Together $1,086.31 $1,426.31 −$30.00',
			'At the end:',
		])
			expect(text).toContain(bare(each))
	})

	test('of a year in which nothing was written says so by its balances', async () => {
		const text = await whole(account(), yearSpan(2028))
		expect(text).toContain(bare('Together $0.00 $0.00 −$30.00'))
	})

	test('of ten years says from when to when, with the names of the columns on each page', async () => {
		const long = Array.from({ length: 120 }, (_, n) => ({
			...invoiced(n + 1, '01-01', '01-01', 1000 + n),
			on: day(`${2017 + Math.floor(n / 12)}-${String((n % 12) + 1).padStart(2, '0')}-04`),
		}))
		const pages = await pagesFor(account({ ledger: long }), { from: day('2017-01-01'), to: day('2026-12-31') })
		expect(pages.length).toBeGreaterThan(2)
		for (const page of pages) expect(bare(page)).toContain('ChargedPaidorcreditedBalance')
		expect(bare(pages[0] ?? '')).toContain(bare('Statement of 2017 to 2026'))
		expect(bare(pages.at(-1) ?? '')).toContain(bare(`${money(cents(1119))} ${money(cents(127_140))} Together`))
	})
})

test('whatever was written, each line and the sums come out of the file', async () => {
	const amount = fc.integer({ min: 1, max: 9_000_000 })
	const entries = fc
		.array(fc.tuple(fc.constantFrom(invoiced, paid), amount), { maxLength: 80 })
		.map((all) =>
			all.map(([make, of], n) => (make === paid ? paid(n + 1, '05-06', of) : invoiced(n + 1, '05-06', '06-05', of))),
		)
	await fc.assert(
		fc.asyncProperty(entries, async (all) => {
			const text = await whole(account({ ledger: all }))
			const of = statement(all, year)
			for (const { entry, balanceCents, cents: by } of of.rows) {
				const moved = money(cents(Math.abs(by)))
				expect(text).toContain(bare(`${entryInWords(entry, all)} ${moved} ${money(balanceCents)}`))
			}
			const sums = [of.addedCents, cents(-of.takenOffCents), of.closingCents].map(money)
			expect(text).toContain(bare(`Together ${sums.join(' ')}`))
		}),
		{ numRuns: 8 },
	)
})

test.each(hardNames)('%s comes out letter by letter', async (name) => {
	const text = await whole(account({ studio: name, client: { id: clientId(1), name } }))
	expect(text.split(bare(name))).toHaveLength(3)
	expect(text).not.toContain('□')
})

describe('what is too long for a page', () => {
	/** No two parts of it are alike, so that none can be lost unseen. */
	const long = Array.from({ length: 1250 }, (_, n) => `m${String(n).padStart(5, '0')}by`).join('')

	test('a name goes on over pages, whole', async () => {
		expect(await whole(account({ client: { id: clientId(1), name: long } }))).toContain(long)
	})

	test('a reason too, and the sums stand below it', async () => {
		const last = { ...writtenOff(8, '12-31', 1, 500), reason: long }
		const text = await whole(account({ ledger: [...ledger.slice(0, -1), last] }))
		// Its own amounts stand beside its first page, the names of the columns above each.
		expect(text.replace('$5.00−$30.00', '').replaceAll('DayWhatChargedPaidorcreditedBalance', '')).toContain(long)
		expect(text).toContain(bare('Together $1,086.31 $1,426.31 −$30.00'))
	})
})
