import type { Telling } from '@/lib/money/invoice/lines'
import type { Heading } from '@/lib/money/invoice/make-invoice'
import { cents } from '@/lib/units/cents'
import { invoiceNumber } from '../sample'

/** What stands on the invoices of these tests. */
export const heading: Heading = {
	number: invoiceNumber(7),
	currency: 'USD',
	from: 'Sill & Stem',
	to: { name: 'Quay Books', address: '3 Quay' },
	purchaseOrder: 'PO 88',
	exemptCertificate: null,
	pay: 'By check to the studio.',
}

export const telling: Telling = {
	about: 'winter 2026–27',
	rows: [
		{ label: 'Left urn', cents: cents(310) },
		{ label: 'Design', cents: cents(140) },
	],
	deposit: { number: invoiceNumber(2), netCents: cents(222) },
}
