import { randomBytes } from 'node:crypto'
import { rmSync } from 'node:fs'
import { v7 } from 'uuid'
import { invoicePdf } from '@/app/server/pdf/invoice'
import { statementPdf } from '@/app/server/pdf/statement'
import { recordPayment } from '@/db/money/acts/record-payment'
import { refund } from '@/db/money/acts/refund'
import { readAccount } from '@/db/money/read-account'
import { closeDatabase, openDatabase } from '@/db/open'
import type { Stamp } from '@/db/stamp'
import { viewerOf } from '@/db/viewer'
import { must } from '@/demo/play/must'
import { moneyFormat } from '@/lib/format/money'
import { statement } from '@/lib/money/statement/statement'
import { statementView } from '@/lib/money/words/statement'
import { cents } from '@/lib/units/cents'
import { day } from '@/lib/units/day'
import { id } from '@/lib/units/id'
import { invoicePaper } from '../app/pdf/money/sample'
import { seededStudio } from '../faults/studio'
import { median, row } from './row'

const stampOf = (at: Stamp['at']): Stamp => ({
	at,
	id: <Of extends string>() => id<Of>(v7()),
	salt: () => randomBytes(16),
})

async function msOf(act: () => Promise<unknown>, { warm, rounds }: { warm: number; rounds: number }): Promise<number> {
	const times: number[] = []
	for (let n = 0; n < warm + rounds; n += 1) {
		const start = performance.now()
		await act()
		if (n >= warm) times.push(performance.now() - start)
	}
	return median(times)
}

const { folder, cast } = await seededStudio()
openDatabase(folder)
const designer = await viewerOf(cast.people.designer.id)
const client = cast.clients.dental.id

/** Ten years, twelve payments a year and as much paid back again. */
const span = { from: day('2016-01-01'), to: day('2025-12-31') }
const months = Array.from({ length: 120 }, (_, n) => ({ year: 2016 + Math.floor(n / 12), month: (n % 12) + 1 }))
for (const { year, month } of months) {
	const on = day(`${year}-${String(month).padStart(2, '0')}-12`)
	const paid = {
		client,
		on,
		cents: cents(41_000 + month),
		means: 'bank transfer',
		reference: `${year} ${month}`,
	} as const
	must('pay', await recordPayment(designer, { ...paid, invoice: null, keepRest: true }, stampOf(cast.now)))
	must('refund', await refund(designer, paid, stampOf(cast.now)))
}
const read = async () => must('read', await readAccount(designer, client, stampOf(cast.now)))
const page = await read()
const shown = async () => {
	const { ledger, currency } = await read()
	return statementView(statement(ledger, span), ledger, moneyFormat(currency))
}
const { lines } = await shown()
row('lines of the statement of ten years', String(lines.length), '240', lines.length === 240)
const reading = await msOf(shown, { warm: 5, rounds: 15 })
row('reading and wording it', `${reading.toFixed(0)} ms`, 'under 100 ms', reading < 100)
const drawn = await msOf(() => statementPdf(page, span), { warm: 3, rounds: 9 })
// The site asks for a year of it at most.
row('PDF of all ten years', `${drawn.toFixed(0)} ms`, 'told', true)
const year = { from: day('2025-01-01'), to: day('2025-12-31') }
const one = await msOf(() => statementPdf(page, year), { warm: 3, rounds: 9 })
row('PDF of one year of it', `${one.toFixed(0)} ms`, 'under 400 ms', one < 400)
const invoice = await msOf(() => invoicePdf(invoicePaper()), { warm: 8, rounds: 15 })
row('PDF of an invoice', `${invoice.toFixed(0)} ms`, 'under 400 ms', invoice < 400)
closeDatabase()
rmSync(folder, { recursive: true })
