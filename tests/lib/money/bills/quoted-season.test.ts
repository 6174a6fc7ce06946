import { describe, expect, test } from 'vitest'
import { billsOfApproval } from '@/lib/money/bills/of-approval'
import { askedOf } from '@/lib/money/bills/quoted-season'
import { chargeCents } from '@/lib/money/charge'
import type { Job } from '@/lib/pricing/job'
import { price } from '@/lib/pricing/price'
import type { PriceList } from '@/lib/pricing/price-list'
import { everything } from '@/lib/pricing/quote/choice'
import { quote } from '@/lib/pricing/quote/quote'
import { cents, sum } from '@/lib/units/cents'
import { day } from '@/lib/units/day'
import { container, containerId, extra, job, words } from '../../pricing/sample'
import { proposalId, revision } from '../sample'

const wreath = extra('wreath')
const named = { is: 'fixed', cents: cents(95_000), containers: [containerId(1)] } as const

/** As lists of discounted seasons were frozen once: all but the extras left to the agreement. */
function likeBefore(list: PriceList): PriceList {
	if (list.discountPercent === 0) return list
	const parts = list.parts.map((part) => (part.is === 'extra' ? part : { ...part, bill: 'agreement' as const }))
	return { ...list, parts }
}

function asked(agreement: Job['agreement'], kind: 'business' | 'household', extras: readonly string[] = []) {
	const of = job({
		agreement,
		containers: [container(1)],
		extras: [wreath],
		payer: { kind, netDays: 30, exemptCertificate: null },
	})
	const list = likeBefore(price(of, words).list)
	const whole = quote(list, { ...everything, extras })
	return { whole, is: askedOf(whole, list) }
}

describe('who asks for a season under an agreement', () => {
	test.each(['business', 'household'] as const)(
		'quoted, the proposal asks a %s for all of it, also where its frozen quote says otherwise',
		(kind) => {
			const { whole, is } = asked({ is: 'discount', percent: 5 }, kind, [wreath.key])
			expect(whole.due.some(({ when }) => when.is === 'by agreement')).toBe(true)
			const when = kind === 'business' ? { is: 'after install', days: 30 } : { is: 'at install' }
			expect(is.due).toEqual([{ cents: whole.totalCents, when }])
			const rates = is.tax.map(({ milliPercent }) => milliPercent)
			expect(new Set(rates).size).toBe(rates.length)
			expect(sum([...is.lines, ...is.tax].map((each) => each.cents))).toBe(whole.totalCents)
			const approval = { proposal: proposalId(1), revision: revision(1), approvedOn: day('2026-10-01'), quote: is }
			const bills = billsOfApproval({ ...approval, since: { is: 'installed', on: day('2026-11-20') } })
			expect(bills.map(({ charge }) => chargeCents(charge))).toEqual([whole.totalCents])
		},
	)

	test.each(['business', 'household'] as const)('a quote that is made today says so to a %s itself', (kind) => {
		const payer = { kind, netDays: 30, exemptCertificate: null } as const
		const { list } = price(job({ agreement: { is: 'discount', percent: 5 }, extras: [wreath], payer }), words)
		const whole = quote(list, { ...everything, extras: [wreath.key] })
		expect(askedOf(whole, list)).toEqual({ lines: whole.lines, tax: whole.tax, due: whole.due })
		expect(whole.due).toHaveLength(1)
	})

	test.each([[named], [{ is: 'none' }]] as const)('else as the quote says: %j', (agreement) => {
		const { whole, is } = asked(agreement, 'business')
		expect(is).toEqual({ lines: whole.lines, tax: whole.tax, due: whole.due })
	})
})
