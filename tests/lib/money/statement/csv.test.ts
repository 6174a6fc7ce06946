import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { type Cell, csv } from '@/lib/money/statement/csv'
import { statement } from '@/lib/money/statement/statement'
import { statementCsv } from '@/lib/money/statement/statement-csv'
import { yearSpan } from '@/lib/money/statement/year'
import { cents } from '@/lib/units/cents'
import { invoiced, paid, writtenOff } from '../sample'
import { records } from './records'

const line = (cell: Cell) => csv(['A'], [[cell]]).slice('A\r\n'.length, -'\r\n'.length)

describe('a cell', () => {
	test.each([
		['plain', 'Left urn', 'Left urn'],
		['with a comma', 'check, 1042', '"check, 1042"'],
		['with a quote', 'the “18 in” urn, 18"', '"the “18 in” urn, 18"""'],
		['of two lines', 'a\nb', '"a\nb"'],
		['a formula', '=1+2', "'=1+2"],
		['a formula with a comma', '=SUM(A1,B1)', '"\'=SUM(A1,B1)"'],
		['a sign in front', '+1 555', "'+1 555"],
		['a minus in front', '-12', "'-12"],
		['an at sign', '@name', "'@name"],
		['a tab', '\t=1', "'\t=1"],
		['a carriage return', '\r=1', '"\'\r=1"'],
		['a wide equals sign', '＝1', "'＝1"],
		['a sign within', 'a-b=c', 'a-b=c'],
		['empty', '', ''],
	] as const)('%s', (_, text, written) => {
		expect(line(text)).toBe(written)
	})

	test.each([
		[120_405, '1204.05'],
		[5, '0.05'],
		[0, '0.00'],
		[-1205, '-12.05'],
		[-9, '-0.09'],
		[Number.MAX_SAFE_INTEGER, '90071992547409.91'],
	])('%i cents is %s', (amount, written) => {
		expect(line({ cents: cents(amount) })).toBe(written)
	})
})

test('a statement as a table', () => {
	const ledger = [
		invoiced(1, '10-09', '10-24', 120_405),
		paid(2, '11-02', 100_000, 1),
		{ ...writtenOff(3, '12-02', 1, 405), reason: '"small", let go' },
	]
	expect(statementCsv(statement(ledger, yearSpan(2026)), ledger)).toBe(
		[
			'Day,What,Charged,Paid or credited,Balance',
			'2026-01-01,Balance before,,,0.00',
			'2026-10-09,"Invoice 2026-0001, due 24 October 2026",1204.05,,1204.05',
			'2026-11-02,"Payment by check, 1002, for invoice 2026-0001",,1000.00,204.05',
			'2026-12-02,"Written off from invoice 2026-0001: ""small"", let go",,4.05,200.00',
			'2026-12-31,Balance after,,,200.00',
			'',
		].join('\r\n'),
	)
})

test('records of another length are a broken promise', () => {
	expect(() => csv(['A', 'B'], [['one']])).toThrow('1 fields under 2 names')
})

test('whatever stands in it is read back as it was, and no cell begins a formula', () => {
	const cell = fc.oneof(
		fc.string(),
		fc.constantFrom('=1', '-', '@', '"', ',', '\r\n', '\t', 'é“', "'=1"),
		fc.string({ unit: 'binary' }),
	)
	fc.assert(
		fc.property(fc.array(fc.tuple(cell, cell, cell), { maxLength: 6 }), (rows) => {
			const read = records(csv(['a', 'b', 'c'], rows)).slice(1)
			expect(read.length).toBe(rows.length)
			for (const [at, row] of rows.entries())
				for (const [n, text] of row.entries()) {
					const found = read[at]?.[n] ?? ''
					expect(found).not.toMatch(/^[=+\-@\t\r\0]/)
					expect([text, `'${text}`]).toContain(found)
				}
		}),
		{ numRuns: 500 },
	)
})
