import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { kept } from '@/lib/proposal/state'
import { groups } from '@/lib/season/group'
import { everyRow, isNarrowed, type LedgerAsk, ledgerAsk, ledgerQuery, sorts } from '@/lib/season/ledger-ask'

const asks: fc.Arbitrary<LedgerAsk> = fc.record({
	show: fc.constantFrom('' as const, ...groups, ...kept, 'lapsed' as const),
	kind: fc.constantFrom('' as const, 'business' as const, 'household' as const),
	palette: fc.stringMatching(/^[a-zé&]{0,20}$/),
	name: fc.stringMatching(/^[A-Za-zé%_]{0,20}$/),
	sort: fc.constantFrom(...sorts),
})

describe('what a season page is asked for', () => {
	test('goes into an address and comes out of it the same', () => {
		fc.assert(
			fc.property(asks, (ask) => {
				const query = new URLSearchParams(ledgerQuery(ask, { page: '2' }))
				expect(query.get('page')).toBe('2')
				expect(ledgerAsk(Object.fromEntries(query))).toEqual({
					...ask,
					palette: ask.palette.normalize('NFC'),
					name: ask.name.normalize('NFC'),
				})
			}),
		)
	})

	test('all of it, in an address that says nothing', () => {
		expect(ledgerAsk({})).toEqual(everyRow)
		expect(ledgerQuery(everyRow)).toBe('')
		expect(isNarrowed(everyRow)).toBe(false)
		expect(isNarrowed({ ...everyRow, sort: 'value' })).toBe(false)
		expect(isNarrowed({ ...everyRow, name: 'inn' })).toBe(true)
	})

	test('nothing that cannot be meant, and the first of several', () => {
		const given = { show: 'everything', kind: 'toString', sort: '__proto__', name: ['inn', 'bakery'] }
		expect(ledgerAsk(given)).toEqual({ ...everyRow, name: 'inn' })
	})

	test('of a text its first sixty characters', () => {
		expect(ledgerAsk({ name: ` ${'x'.repeat(500)}` }).name).toHaveLength(60)
	})
})
