import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { makeOffer } from '@/lib/proposal/make'
import { standing } from '@/lib/season/standing'
import { weigh } from '@/lib/season/weigh'
import { knownDrafts } from '../proposal/known'
import { draft, facts, money, today } from '../proposal/sample'

describe('what a draft comes to', () => {
	test('is what its row in the ledger says once it is published as it stands', () => {
		fc.assert(
			fc.property(knownDrafts, (of) => {
				const { offer, inputs } = makeOffer(of, facts, money, 1, today)
				const weighed = weigh(of, facts)
				expect(weighed === null).toBe(offer.options.length === 0)
				if (weighed !== null) expect(standing(offer, inputs, facts.rates, { money })).toMatchObject(weighed)
			}),
		)
	})

	test('is nothing without a palette, and without a container of the client’s', () => {
		expect(weigh({ ...draft, options: [] }, facts)).toBeNull()
		expect(weigh(draft, { ...facts, cards: [] })).toBeNull()
	})

	test('follows the rates', () => {
		const dearer = { ...facts, rates: { ...facts.rates, billedCentsPerHour: facts.rates.billedCentsPerHour * 2 } }
		expect(weigh(draft, dearer)?.valueCents).toBeGreaterThan(weigh(draft, facts)?.valueCents ?? Number.NaN)
	})
})
