import type { MailedLate, MailedPayment } from '@/db/outbox/mailed-money'
import { fullDay } from '@/lib/format/day'
import { moneyFormat } from '@/lib/format/money'
import { capital } from '@/lib/format/words'
import type { Invoice } from '@/lib/money/invoice/invoice'
import { exemptInWords, taxInWords, termsInWords } from '@/lib/money/words/invoice'
import { lateInWords } from '@/lib/money/words/late'
import { sum } from '@/lib/units/cents'
import type { Filled } from './letters'

const howToPay = (words: string) => (words === '' ? [] : [words])
const orderOf = ({ purchaseOrder }: Invoice) =>
	purchaseOrder === '' ? [] : [['Purchase order', purchaseOrder] as const]

/** To those at a client who may approve: what is asked for, line by line, and how to pay it. */
export function invoiceLetter(invoice: Invoice): Filled {
	const { number, about, lines, tax, totalCents, dueOn, pay } = invoice
	const money = moneyFormat(invoice.currency)
	const exempt = exemptInWords(invoice)
	return {
		subject: `Invoice ${number}: ${money(totalCents)}, due ${fullDay(dueOn)}`,
		paragraphs: [`This is our invoice for ${about}.`, ...howToPay(pay), ...(exempt === null ? [] : [exempt])],
		rows: [['Invoice', number], ['For', capital(about)], ...orderOf(invoice), ['To be paid', termsInWords(invoice)]],
		prices: [
			...lines.map(({ words, cents }) => [words, money(cents)] as const),
			...tax.map((each) => [taxInWords(each, money), money(each.cents)] as const),
			['Total', money(totalCents)],
		],
		label: 'See the invoice',
	}
}

/** What is late, and no word that presses. */
export function lateLetter({ late, currency, payWords }: MailedLate): Filled {
	const money = moneyFormat(currency)
	const open = money(sum(late.map(({ openCents }) => openCents)))
	return {
		subject: `A reminder: ${open} is past its day`,
		paragraphs: [
			'It may have slipped by. If it is on its way to us already, please forget this mail.',
			...late.map((each) => `${lateInWords(each, money)}.`),
			...howToPay(payWords),
		],
		label: 'See what is open',
	}
}

export function paidLetter({ payment, currency, account: { openCents, creditCents } }: MailedPayment): Filled {
	const money = moneyFormat(currency)
	const kept = creditCents > 0 ? [`${money(creditCents)} of it is kept as credit.`] : []
	const open = openCents > 0 ? `${money(openCents)} is open still.` : 'Nothing is open.'
	return {
		subject: `We received ${money(payment.cents)}, thank you`,
		paragraphs: [`Your payment came on ${fullDay(payment.on)}.`, [...kept, open].join(' ')],
		rows: [
			['Amount', money(payment.cents)],
			...(payment.reference === '' ? [] : [['Reference', payment.reference] as const]),
			...(payment.invoice === null ? [] : [['For invoice', payment.invoice] as const]),
		],
		label: 'See your account',
	}
}
