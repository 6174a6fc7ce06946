import { allocate } from '../pricing/allocate'
import type { Quote } from '../pricing/quote/quote'
import { type Cents, cents, sum, zero } from '../units/cents'

/** Tax at one rate (thousandths of a per cent) and what of the amount before tax it is on. */
export type TaxShare = { readonly milliPercent: number; readonly baseCents: Cents; readonly cents: Cents }

/** An amount asked for: what it is before tax, and the tax per rate. */
export type Charge = { readonly netCents: Cents; readonly tax: readonly TaxShare[] }

export const chargeCents = ({ netCents, tax }: Charge): Cents => sum([netCents, ...tax.map((each) => each.cents)])

/** What an approved quote asks for beside the agreement. */
export function apartOf({ lines, tax }: Pick<Quote, 'lines' | 'tax'>): Charge {
	return {
		netCents: sum(lines.filter(({ bill }) => bill === 'apart').map((line) => line.cents)),
		tax: tax
			.filter(({ bill }) => bill === 'apart')
			.map(({ milliPercent, baseCents, cents }) => ({ milliPercent, baseCents, cents })),
	}
}

const less = (a: Cents, b: Cents) => cents(a - b)

/** @throws when one has a rate that the other has not */
export function without(whole: Charge, taken: Charge): Charge {
	const of = (milliPercent: number) => {
		const found = taken.tax.find((each) => each.milliPercent === milliPercent)
		if (found === undefined) throw new Error(`without: no tax at ${milliPercent} was taken`)
		return found
	}
	if (taken.tax.length !== whole.tax.length) throw new Error('without: the rates of tax are not the same')
	return {
		netCents: less(whole.netCents, taken.netCents),
		tax: whole.tax.map(({ milliPercent, baseCents, cents: amount }) => ({
			milliPercent,
			baseCents: less(baseCents, of(milliPercent).baseCents),
			cents: less(amount, of(milliPercent).cents),
		})),
	}
}

/**
 * `amount`, tax in it, out of a charge: the net and the tax of each rate in proportion by largest remainder, so that
 * what is taken is `amount` to the cent and no part of what is left falls below zero.
 * @throws when `amount` is below zero or more than the charge
 */
export function part(of: Charge, amount: Cents): { readonly taken: Charge; readonly left: Charge } {
	const whole = chargeCents(of)
	if (amount < 0 || amount > whole) throw new Error(`part: ${amount} is no part of ${whole}`)
	const [net = zero, ...tax] = allocate(amount, [of.netCents, ...of.tax.map((each) => each.cents)])
	const rest = less(whole, amount)
	const taken = {
		netCents: net,
		tax: of.tax.map(({ milliPercent, baseCents }, index) => ({
			milliPercent,
			baseCents: allocate(baseCents, [amount, rest])[0] ?? zero,
			cents: tax[index] ?? zero,
		})),
	}
	return { taken, left: without(of, taken) }
}

/** One after the other out of what is left of the charge, so that the last takes the odd cents of every rate. */
export function inTurn(charge: Charge, amounts: readonly Cents[]): { parts: Charge[]; left: Charge } {
	let left = charge
	const parts = amounts.map((amount) => {
		const split = part(left, amount)
		left = split.left
		return split.taken
	})
	return { parts, left }
}

/** Several as one: the tax of a rate stands once. */
export function together(charges: readonly Charge[]): Charge {
	const rates = [...new Set(charges.flatMap(({ tax }) => tax.map(({ milliPercent }) => milliPercent)))]
	return {
		netCents: sum(charges.map(({ netCents }) => netCents)),
		tax: rates.map((milliPercent) => {
			const at = charges.flatMap(({ tax }) => tax.filter((each) => each.milliPercent === milliPercent))
			return {
				milliPercent,
				baseCents: sum(at.map(({ baseCents }) => baseCents)),
				cents: sum(at.map((each) => each.cents)),
			}
		}),
	}
}

/** The tax of the rates at which there is something. */
export const taxed = ({ tax }: Charge): TaxShare[] =>
	tax.filter(({ baseCents, cents: amount }) => baseCents !== 0 || amount !== 0)
