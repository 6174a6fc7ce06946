import { expect, test } from 'vitest'
import { instalmentsOf } from '@/lib/agreement/instalment/instalments'
import type { Plan } from '@/lib/agreement/instalment/plan'
import { cents, sum } from '@/lib/units/cents'
import { day } from '@/lib/units/day'
import { winter } from '../../lib/agreement/sample'

// Worked by hand from the method of largest remainders (Hamilton); a tie goes to the earlier part, which the method
// leaves open. The method itself is checked against the House of 1790 in `largest-remainder.test.ts`.
const due = { is: 'on', day: day('2027-01-31') } as const
const shares = (...weights: number[]): Plan => ({ is: 'own dates', parts: weights.map((weight) => ({ weight, due })) })
const monthly = (count: number): Plan => ({ is: 'every months', months: 1, count, start: due })

test.each([
	{ name: 'three alike', total: 100_000, plan: monthly(3), parts: [33_334, 33_333, 33_333] },
	{ name: 'half and two quarters', total: 9999, plan: shares(50, 25, 25), parts: [4999, 2500, 2500] },
	{ name: 'two fifths and the rest', total: 100_001, plan: shares(40, 30, 30), parts: [40_001, 30_000, 30_000] },
	{
		name: 'seven alike',
		total: 76_543,
		plan: monthly(7),
		parts: [10_935, 10_935, 10_935, 10_935, 10_935, 10_934, 10_934],
	},
])('$name', ({ total, plan, parts }) => {
	expect(sum(parts.map(cents))).toBe(total)
	const season = { ...winter, price: { is: 'fixed', cents: cents(total) } as const }
	expect(instalmentsOf([season], plan).map((each) => each.cents)).toEqual(parts)
})
