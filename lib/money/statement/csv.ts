import type { Cents } from '../../units/cents'

/** Text, or an amount, which is written as a plain decimal. */
export type Cell = string | { readonly cents: Cents }

/** Characters at which a table program takes a text for a formula (OWASP ASVS 5.0.0, 1.2.10). */
const formula = /^[=+\-@\t\r\0\uff1d\uff0b\uff0d\uff20]/

/** A quote in front makes it text again. */
const harmless = (text: string) => (formula.test(text) ? `'${text}` : text)

/** -1205 becomes "-12.05", digit by digit. */
function decimal(amount: Cents): string {
	const digits = String(Math.abs(amount)).padStart(3, '0')
	return `${amount < 0 ? '-' : ''}${digits.slice(0, -2)}.${digits.slice(-2)}`
}

/** RFC 4180, section 2, rules 5 to 7. */
const quoted = (text: string) => (/[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text)

const field = (cell: Cell) => (typeof cell === 'string' ? quoted(harmless(cell)) : decimal(cell.cents))

/**
 * A table as comma-separated values (RFC 4180): CRLF after each record, all records of the same length.
 * @throws when one has another length
 */
export function csv(header: readonly string[], rows: readonly (readonly Cell[])[]): string {
	for (const row of rows)
		if (row.length !== header.length) throw new Error(`csv: ${row.length} fields under ${header.length} names`)
	return [header, ...rows].map((row) => `${row.map(field).join(',')}\r\n`).join('')
}
