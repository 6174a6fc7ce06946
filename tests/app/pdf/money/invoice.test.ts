import { afterEach, describe, expect, test, vi } from 'vitest'
import type { InvoicePaper } from '@/app/documents/pdf/money/invoice-view'
import { invoicePdf } from '@/app/server/pdf/invoice'
import { moneyFormat } from '@/lib/format/money'
import { invoiceSchema } from '@/lib/money/invoice/invoice'
import { cents } from '@/lib/units/cents'
import { hardNames } from '../hard-names'
import { qpdf } from '../seal/judges'
import { bare, pagesOf } from '../text'
import { invoice, invoicePaper, oneNote } from './sample'

/** The renderer says on the console what it could not lay out. */
const complaints = vi.spyOn(console, 'warn')
afterEach(() => {
	expect(complaints.mock.calls).toEqual([])
	complaints.mockClear()
})

const money = moneyFormat('USD')
const pagesFor = async (input: InvoicePaper) => pagesOf(await invoicePdf(input))
const whole = async (input: InvoicePaper) => bare((await pagesFor(input)).join(''))

describe('the file of an invoice', () => {
	test('is the same bytes for the same invoice, and others for another or on other paper', async () => {
		const first = await invoicePdf(invoicePaper())
		expect((await invoicePdf(invoicePaper())).equals(first)).toBe(true)
		expect((await invoicePdf(invoicePaper(invoice(), { paper: 'A4' }))).equals(first)).toBe(false)
		const other = invoice({ heading: { purchaseOrder: 'PO 89' } })
		expect((await invoicePdf(invoicePaper(other))).equals(first)).toBe(false)
	})

	test('has a table of its objects that a strict reader finds nothing wrong with', async () => {
		const { says } = qpdf(await invoicePdf(invoicePaper(invoice(), { notes: [oneNote(invoice())] })))
		expect(says).toContain('No syntax or stream encoding errors found')
	})

	test('is one page that says by whom, for whom, since when, and what is to be paid by when', async () => {
		const [page = '', ...more] = await pagesOf(await invoicePdf(invoicePaper()), { withFoot: true })
		expect(more).toEqual([])
		for (const each of [
			...['Invoice 2026-0007', 'Sill & Stem', 'Quay Books', '3 Quay', 'Date 20 November 2026'],
			...['For Winter 2026–27', 'Purchase order PO 88', 'Due 20 December 2026: 30 days after 20 November 2026'],
			...['How to pay', 'By check to the studio.', '1 of 1'],
		])
			expect(bare(page)).toContain(bare(each))
	})

	test('has every line, every tax and the total, below one another', async () => {
		expect(await whole(invoicePaper())).toContain(
			bare(
				'Left urn $810.00 Design $424.50 Sales tax, 6 % of $810.00 $48.60 Sales tax, 7.25 % of $424.50 $30.78 Total $1,313.88',
			),
		)
	})

	test('names the certificate of who is exempt, and then no tax', async () => {
		const { tax: _, ...rest } = invoice()
		const exempt = { ...rest, exemptCertificate: 'EX-771', tax: [], totalCents: cents(123_450) }
		const text = await whole(invoicePaper(invoiceSchema.parse(exempt)))
		expect(text).toContain(bare('No sales tax: exempt, certificate EX-771.'))
		expect(text).not.toContain('Salestax,')
	})

	test('leaves out what was not given', async () => {
		const text = await whole(invoicePaper(invoice({ heading: { purchaseOrder: '', pay: '' } })))
		expect(text).not.toMatch(/Purchaseorder|Howtopay|exempt/)
	})
})

describe('a credit note to it', () => {
	test('has the next page: the reason, what is less, tax and total', async () => {
		const note = oneNote(invoice())
		const pages = await pagesFor(invoicePaper(invoice(), { notes: [note] }))
		expect(pages).toHaveLength(2)
		const last = bare(pages[1] ?? '')
		for (const each of ['Credit note C2026-0003', 'To invoice 2026-0007', 'Reason Two branches too few.'])
			expect(last).toContain(bare(each))
		for (const { cents: amount } of note.tax) expect(last).toContain(bare(money(amount)))
		expect(last).toContain(bare('Total $100.00'))
		expect(last).not.toContain(bare('How to pay'))
	})
})

test.each(hardNames)('%s comes out letter by letter, wherever it stands', async (name) => {
	const of = invoice({
		heading: { from: name, to: { name, address: `3 Quay\n${name}` }, purchaseOrder: name, pay: name },
	})
	const text = await whole(invoicePaper(of))
	expect(text.split(bare(name))).toHaveLength(6)
	expect(text).not.toContain('□')
})

describe('what is too long for a page', () => {
	/** No two parts of it are alike, so that none can be lost unseen. */
	const long = Array.from({ length: 1250 }, (_, n) => `m${String(n).padStart(5, '0')}by`).join('')

	test.each([
		['a name', { heading: { to: { name: long, address: '3 Quay' } } }],
		['an address', { heading: { to: { name: 'Quay Books', address: long } } }],
		['a purchase order', { heading: { purchaseOrder: long } }],
		['how to pay', { heading: { pay: long } }],
		['a line', { telling: { rows: [{ label: long, cents: cents(123_450) }] } }],
	])('%s: goes on over pages, whole, and so does the total', async (_name, its) => {
		const text = await whole(invoicePaper(invoice(its)))
		// The line's own amount stands beside its first page.
		expect(text.replace('$1,234.50', '')).toContain(long)
		expect(text).toContain(bare('Total $1,313.88'))
	})

	test('a hundred lines: each with its amount, the total beside the last of them', async () => {
		const rows = Array.from({ length: 90 }, (_, n) => ({ label: `Urn ${n + 1}`, cents: cents(1000 + n) }))
		const rest = { label: 'Design', cents: cents(123_450 - rows.reduce((sum, row) => sum + row.cents, 0)) }
		const pages = await pagesFor(invoicePaper(invoice({ telling: { rows: [...rows, rest] } })))
		const text = bare(pages.join(''))
		for (const { label, cents: amount } of rows) expect(text).toContain(bare(`${label} ${money(amount)}`))
		const last = bare(pages.find((page) => page.includes('Total')) ?? '')
		expect(last).toContain(bare('Sales tax, 7.25 % of $424.50 $30.78 Total $1,313.88'))
	})
})
