import fc from 'fast-check'
import { expect, test } from 'vitest'
import type { MoneyFormat } from '@/lib/format/money'
import { take } from '@/lib/proposal/answer'
import { makeOffer } from '@/lib/proposal/make'
import { priceView } from '@/lib/proposal/offer/price-view'
import { knownDrafts } from '../known'
import { draft, facts, money, today } from '../sample'

/** Money told in bare cents, so that it can be added up again. */
const bare: MoneyFormat = (amount) => String(amount)
const added = (of: readonly { amount: string }[]) => of.reduce((all, { amount }) => all + Number(amount), 0)

test('whatever is taken, rows and taxes add up to the total, and what is due too', () => {
	const picks = fc.record({
		which: fc.nat(3),
		mix: fc.array(fc.boolean()),
		extras: fc.array(fc.boolean()),
		out: fc.array(fc.boolean()),
	})
	fc.assert(
		fc.property(fc.oneof(knownDrafts, fc.constant(draft)), picks, (random, { which, mix, extras, out }) => {
			const { offer } = makeOffer(random, facts, money, 1, today)
			const option = offer.options[which % Math.max(1, offer.options.length)]
			if (option === undefined) return
			const taken = take(offer, {
				option: option.key,
				places: Object.fromEntries(
					offer.places.flatMap(({ id }, n) => (mix[n] ? [[id, offer.options.at(-1)?.key ?? '']] : [])),
				),
				extras: offer.extras.filter((_, n) => extras[n]).map(({ key }) => key),
				leftOut: offer.containers.filter((_, n) => out[n]).map(({ id }) => id),
			})
			if (!taken.ok) return
			const { rows: of, taxes, total, due } = priceView(offer, taken.quote, bare)
			expect(added(of) + added(taxes)).toBe(Number(total))
			expect(added(of)).toBe(taken.quote.netCents)
			expect((due.match(/\d+(?= (on|when|within|by))/g) ?? []).reduce((all, each) => all + Number(each), 0)).toBe(
				Number(total),
			)
			expect(new Set([...of, ...taxes].map(({ key }) => key)).size).toBe(of.length + taxes.length)
			const put = taken.quote.lines.flatMap((line) =>
				line.is === 'container' ? [line.container] : line.is === 'extra' ? [line.extra] : [],
			)
			expect(of.filter(({ key }) => /^(?:container|extra) /.test(key)).length).toBe(new Set(put).size)
		}),
		{ numRuns: 300 },
	)
})
