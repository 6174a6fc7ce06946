import { type Cents, cents, zero } from '@/lib/units/cents'
import { divideHalfUp, divideUp, thousandths } from '@/lib/units/decimal'
import type { JobLine } from '../job'
import type { Rates } from '../rates'
import { explainLine, type Words } from './explain'
import { usesOfLife } from './uses-of-life'

export type PricedLine = {
	readonly name: string
	readonly costCents: Cents
	readonly priceCents: Cents
	/** How the price came about: "14 stems × 1.10 × $18.40 ÷ 10 × 2.2". */
	readonly price: string
	/** Where the cost came about otherwise than the price: whole packs, written off, the client's own. */
	readonly cost: string | null
}

/** 100 % plus `percent`, in thousandths of a per cent. */
const withPercent = (percent: number) => 100_000n + thousandths(percent)
const wholePercent = 100_000n

/** count × (1 + loss) × pack price × (1 + freight) ÷ pack size, half up to the cent. */
function shareOfPack({ count, kind, pack }: JobLine, rates: Rates): Cents {
	const needed = thousandths(count) * withPercent(rates.lossPercent[kind])
	const price = BigInt(pack.cents) * withPercent(pack.freightPercent)
	return cents(Number(divideHalfUp(needed * price, thousandths(pack.size) * wholePercent * wholePercent)))
}

/** Packs to buy when nobody else uses the rest of the last one. */
function packsFor({ count, kind, pack }: JobLine, rates: Rates): bigint {
	return divideUp(thousandths(count) * withPercent(rates.lossPercent[kind]), thousandths(pack.size) * wholePercent)
}

function wholePacks(line: JobLine, rates: Rates): Cents {
	const price = BigInt(line.pack.cents) * withPercent(line.pack.freightPercent)
	return cents(Number(divideHalfUp(packsFor(line, rates) * price, wholePercent)))
}

const perUse = (whole: Cents, uses: number) => cents(Number(divideHalfUp(BigInt(whole), BigInt(uses))))

const times = (cost: Cents, markup: number) => cents(Number(divideHalfUp(BigInt(cost) * thousandths(markup), 1000n)))

/**
 * Cost and price of one line, in cents. The price follows from the share of the pack that the line takes;
 * the cost from the packs that are bought for it, and is nothing once a lent thing has paid for itself.
 * @throws when the count is negative, the pack is empty, or what cannot come back is lent
 */
export function priceLine(line: JobLine, rates: Rates, words: Words): PricedLine {
	if (line.count < 0 || line.pack.size <= 0 || line.pack.cents < 0)
		throw new Error(`priceLine: ${line.name}: ${line.count} from packs of ${line.pack.size} at ${line.pack.cents}`)
	const explained = explainLine(line, rates, words, Number(packsFor(line, rates)))
	if (line.holding === 'own') return { name: line.name, costCents: zero, priceCents: zero, ...explained }
	const uses = usesOfLife(line, rates)
	const share = perUse(shareOfPack(line, rates), uses)
	const bought = line.onlyHere ? perUse(wholePacks(line, rates), uses) : share
	const writtenOff = line.holding === 'lent' && line.usesBefore >= uses
	return {
		name: line.name,
		costCents: writtenOff ? zero : bought,
		priceCents: times(share, rates.markup[line.kind]),
		...explained,
	}
}
