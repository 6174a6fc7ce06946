import type { Brand } from '../../units/brand'
import type { Day } from '../../units/day'

/** The year and a count from 1 on, four digits at least: "2026-0001". No number is left out within a year. */
export type InvoiceNumber = Brand<string, 'InvoiceNumber'>
/** Counted by themselves: "C2026-0001". */
export type CreditNumber = Brand<string, 'CreditNumber'>

const counted = '[0-9]{4}-(?!0000$)([0-9]{4}|[1-9][0-9]{4,8})$'
const shapes = { invoice: new RegExp(`^${counted}`), credit: new RegExp(`^C${counted}`) }

export const isInvoiceNumber = (text: string): text is InvoiceNumber => shapes.invoice.test(text)
export const isCreditNumber = (text: string): text is CreditNumber => shapes.credit.test(text)

const parts = (number: string): { year: number; count: number } => {
	const [year, count] = number.replace('C', '').split('-').map(Number)
	return { year: year ?? 0, count: count ?? 0 }
}

/** In the order in which they were given. */
export function inOrder<Of extends InvoiceNumber | CreditNumber>(a: Of, b: Of): number {
	const [first, second] = [parts(a), parts(b)]
	return first.year - second.year || first.count - second.count
}

function next(last: string | null, on: Day): string {
	const year = Number(on.slice(0, 4))
	const before = last === null ? { year: 0, count: 0 } : parts(last)
	if (before.year > year) throw new Error(`number: ${last} was given before ${on}`)
	const count = before.year === year ? before.count + 1 : 1
	return `${on.slice(0, 4)}-${String(count).padStart(4, '0')}`
}

/** The one after `last` of an invoice dated `on`. @throws when `last` is of a later year */
export function nextInvoice(last: InvoiceNumber | null, on: Day): InvoiceNumber {
	const number = next(last, on)
	if (!isInvoiceNumber(number)) throw new Error(`number: "${number}" is no number of an invoice`)
	return number
}

/** The one after `last` of a credit note dated `on`. @throws when `last` is of a later year */
export function nextCredit(last: CreditNumber | null, on: Day): CreditNumber {
	const number = `C${next(last, on)}`
	if (!isCreditNumber(number)) throw new Error(`number: "${number}" is no number of a credit note`)
	return number
}
