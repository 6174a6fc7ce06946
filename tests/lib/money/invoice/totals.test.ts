import fc from 'fast-check'
import { expect, test } from 'vitest'
import { type Approval, billsOfApproval } from '@/lib/money/bills/of-approval'
import { chargeCents } from '@/lib/money/charge'
import type { Invoice } from '@/lib/money/invoice/invoice'
import { makeInvoice } from '@/lib/money/invoice/make-invoice'
import type { Job } from '@/lib/pricing/job'
import { price } from '@/lib/pricing/price'
import { type Quote, quote } from '@/lib/pricing/quote/quote'
import { summedRows } from '@/lib/proposal/picked/summed-rows'
import { sum } from '@/lib/units/cents'
import { day } from '@/lib/units/day'
import { hex } from '@/lib/units/hex'
import { chosenJobs } from '../../pricing/arbitrary'
import { words } from '../../pricing/sample'
import { invoiceNumber, proposalId, revision } from '../sample'
import { heading } from './sample'

const on = day('2026-11-20')

/** What an offer says of a job's containers, extras and places. */
const offered = ({ containers, extras, visits }: Job) => ({
	containers: containers.map(({ id, place, name }) => ({ id, place, name, words: '', mayLeaveOut: true })),
	extras: extras.map(({ key, place, name }) => ({ key, place, name, words: '', lines: [] })),
	places: visits.map(({ place, name }) => ({
		...{ id: place, name, address: name, door: null },
		wall: { kind: 'brick' as const, hex: hex('#aa5544') },
	})),
})

/** Every invoice of an approval that is in, made from what was offered and approved. */
function invoicesOf(job: Job, approved: Quote): Invoice[] {
	const approval: Approval = {
		...{ proposal: proposalId(1), revision: revision(1), approvedOn: day('2026-10-09'), quote: approved },
		since: { is: 'installed', on },
	}
	const rows = summedRows(
		approved.lines.filter(({ bill }) => bill === 'apart'),
		offered(job),
	)
	const bills = billsOfApproval(approval)
	const [first] = bills
	const deposit = first === undefined ? null : { number: invoiceNumber(1), netCents: first.charge.netCents }
	const { exemptCertificate, currency } = approved
	return bills.map((bill, index) =>
		makeInvoice(
			bill,
			{ ...heading, number: invoiceNumber(index + 1), exemptCertificate, currency },
			{ about: 'winter 2026–27', rows, deposit },
			on,
		),
	)
}

test('the invoices of an approval are its total to the cent, its tax at each rate, and its lines', () => {
	fc.assert(
		fc.property(chosenJobs, ({ job, choice }) => {
			const approved = quote(price(job, words).list, choice)
			const invoices = invoicesOf(job, approved)
			const agreed = sum(approved.due.filter(({ when }) => when.is === 'by agreement').map((due) => due.cents))
			expect(sum(invoices.map(({ totalCents }) => totalCents)) + agreed).toBe(approved.totalCents)
			const net = approved.lines.filter(({ bill }) => bill === 'apart').map((line) => line.cents)
			expect(sum(invoices.flatMap(({ lines }) => lines.map((line) => line.cents)))).toBe(sum(net))
			for (const { milliPercent, baseCents, cents, bill } of approved.tax) {
				if (bill === 'agreement') continue
				const found = invoices.flatMap(({ tax }) => tax.filter((each) => each.milliPercent === milliPercent))
				expect(sum(found.map((each) => each.cents))).toBe(cents)
				expect(sum(found.map((each) => each.baseCents))).toBe(baseCents)
			}
			expect(invoices.every(({ exemptCertificate }) => exemptCertificate === job.payer.exemptCertificate)).toBe(true)
		}),
		{ numRuns: 150 },
	)
})

test('one invoice of a business without an agreement is the whole approved quote', () => {
	fc.assert(
		fc.property(chosenJobs, ({ job, choice }) => {
			const plain: Job = { ...job, agreement: { is: 'none' }, payer: { ...job.payer, kind: 'business' } }
			const approved = quote(price(plain, words).list, choice)
			fc.pre(approved.totalCents > 0)
			const [invoice, second] = invoicesOf(plain, approved)
			expect(second).toBeUndefined()
			expect(invoice?.totalCents).toBe(approved.totalCents)
			expect(invoice?.tax).toEqual(approved.tax.map(({ bill: _, ...each }) => each))
			expect(chargeCents({ netCents: approved.netCents, tax: approved.tax })).toBe(approved.totalCents)
		}),
		{ numRuns: 100 },
	)
})
