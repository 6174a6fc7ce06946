import { creditInvoice } from '@/db/money/acts/credit'
import { recordPayment } from '@/db/money/acts/record-payment'
import { refund } from '@/db/money/acts/refund'
import { undoEntry } from '@/db/money/acts/undo'
import { writeOff } from '@/db/money/acts/write-off'
import { billDue, billNow } from '@/db/money/bills/bill-due'
import { readPayWords, savePayWords } from '@/db/money/pay-words'
import { readAccount } from '@/db/money/read-account'
import { readInvoice } from '@/db/money/read-invoice'
import { readLate, readMoney } from '@/db/money/read-money'
import { remindAllLate, remindLate, remindLateDue } from '@/db/money/remind-late'
import { readSeasonResult } from '@/db/money/season-result'
import { mailedInvoice, mailedLate, mailedPayment } from '@/db/outbox/mailed-money'
import type { Viewer } from '@/lib/access/viewer'
import { isInvoiceNumber } from '@/lib/money/invoice/number'
import { cents } from '@/lib/units/cents'
import { day, moment } from '@/lib/units/day'
import { id } from '@/lib/units/id'
import {
	designerDoes,
	designerReads,
	type House,
	type Row,
	row,
	designerAndSystemRead as studioReads,
	systemReads,
	type Things,
	to,
} from './outcomes'

const studioDoes = to('value', 'hidden', 'hidden', 'hidden', 'hidden', 'hidden', 'value')
const payerReads = to('value', 'hidden', 'value', 'forbidden', 'hidden', 'hidden', 'value')

const muchLater = moment(new Date('2027-09-30T16:00:00Z'))
const numberOf = ({ invoice }: Things) => {
	if (!isInvoiceNumber(invoice)) throw new Error(invoice)
	return invoice
}
const paid = { on: day('2026-10-05'), cents: cents(700), means: 'cash', reference: '' } as const
const pay = (viewer: Viewer, { client }: Things, { stamp }: House) =>
	recordPayment(viewer, { ...paid, client, invoice: null, keepRest: true }, stamp())
const off = { cents: cents(300), reason: 'Two too many.' } as const

async function lastEntry(viewer: Viewer, { client }: Things, { stamp }: House) {
	const page = await readAccount(viewer, client, stamp())
	return (page.ok && page.ledger.at(-1)?.id) || id<'entry'>('01999999-0000-7000-8000-00000000000a')
}

/** Function × person, as in the table beside it. */
export const moneyRows: Readonly<Record<string, Row>> = {
	'money/acts/credit creditInvoice': row(
		'client',
		studioDoes,
	)((viewer, things, { stamp }) =>
		creditInvoice(viewer, { client: things.client, invoice: numberOf(things), ...off }, stamp()),
	),
	'money/acts/record-payment recordPayment': row('client', studioDoes)(pay),
	'money/acts/refund refund': row(
		'client',
		studioDoes,
	)(async (viewer, things, house) => {
		const more = { ...paid, client: things.client, cents: cents(900_000) }
		await recordPayment(viewer, { ...more, invoice: null, keepRest: true }, house.stamp())
		return refund(viewer, { ...paid, client: things.client }, house.stamp())
	}),
	'money/acts/undo undoEntry': row(
		'client',
		studioDoes,
	)(async (viewer, things, house) => {
		await pay(viewer, things, house)
		const entry = await lastEntry(viewer, things, house)
		return undoEntry(viewer, { client: things.client, entry, reason: 'Typed twice.' }, house.stamp())
	}),
	'money/acts/write-off writeOff': row(
		'client',
		studioDoes,
	)((viewer, things, { stamp }) =>
		writeOff(viewer, { client: things.client, invoice: numberOf(things), ...off }, stamp()),
	),
	'money/bills/bill-due billDue': row(
		'studio',
		to('none', 'none', 'none', 'none', 'none', 'none', 'none'),
	)((viewer, _, { stamp }) => billDue(viewer, stamp(muchLater))),
	'money/bills/bill-due billNow': row(
		'client',
		studioDoes,
	)((viewer, { client }, { stamp }) => billNow(viewer, { client }, stamp())),
	'outbox/mailed-money mailedInvoice': row(
		'client',
		systemReads,
	)((viewer, { invoice, person }) => mailedInvoice(viewer, { invoice, person })),
	'outbox/mailed-money mailedLate': row(
		'client',
		systemReads,
	)((viewer, { client, person }, { stamp }) => mailedLate(viewer, { account: client, person }, stamp())),
	// Whoever may write a payment does so first: of the designer that alone is seen.
	'outbox/mailed-money mailedPayment': row(
		'client',
		to('done', 'none', 'none', 'none', 'none', 'none', 'value'),
	)(async (viewer, things, house) => {
		await pay(viewer, things, house)
		return mailedPayment(viewer, { entry: await lastEntry(viewer, things, house), person: things.person })
	}),
	'money/pay-words readPayWords': row('studio', designerReads)((viewer) => readPayWords(viewer)),
	'money/pay-words savePayWords': row(
		'studio',
		designerDoes,
	)((viewer, _, { stamp }) => savePayWords(viewer, 'By check.', stamp())),
	'money/read-account readAccount': row(
		'client',
		payerReads,
	)((viewer, { client }, { stamp }) => readAccount(viewer, client, stamp())),
	'money/read-invoice readInvoice': row('client', payerReads)((viewer, { invoice }) => readInvoice(viewer, invoice)),
	'money/read-money readLate': row('studio', studioReads)((viewer, _, { stamp }) => readLate(viewer, stamp())),
	'money/read-money readMoney': row('studio', studioReads)((viewer, _, { stamp }) => readMoney(viewer, stamp())),
	'money/remind-late remindAllLate': row(
		'studio',
		studioDoes,
	)((viewer, _, { stamp }) => remindAllLate(viewer, stamp(muchLater))),
	'money/remind-late remindLate': row(
		'client',
		studioDoes,
	)((viewer, { client }, { stamp }) => remindLate(viewer, { client, again: false }, stamp(muchLater))),
	'money/remind-late remindLateDue': row(
		'studio',
		to('none', 'none', 'none', 'none', 'none', 'none', 'value'),
	)((viewer, _, { stamp }) => remindLateDue(viewer, stamp(muchLater))),
	'money/season-result readSeasonResult': row(
		'studio',
		designerReads,
	)((viewer, _, { season }) => readSeasonResult(viewer, season)),
}
