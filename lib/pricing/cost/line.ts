import { type Cents, cents, zero } from '@/lib/units/cents'
import { divideHalfUp, thousandths } from '@/lib/units/decimal'
import type { JobLine } from '../job'
import type { Rates } from '../rates'
import { type Bought, boughtAlone, shareOfPack } from './bought'
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

const perUse = (whole: Cents, uses: number) => cents(Number(divideHalfUp(BigInt(whole), BigInt(uses))))

const times = (cost: Cents, markup: number) => cents(Number(divideHalfUp(BigInt(cost) * thousandths(markup), 1000n)))

/**
 * Cost and price of one line, in cents. The price follows from the share of the pack that the line takes;
 * the cost from the packs that are bought for it (`together` with other lines of the job), and is nothing once a
 * lent thing has paid for itself.
 * @throws when the count is negative, the pack is empty, or what cannot come back is lent
 */
export function priceLine(line: JobLine, rates: Rates, words: Words, together?: Bought): PricedLine {
	if (line.count < 0 || line.pack.size <= 0 || line.pack.cents < 0)
		throw new Error(`priceLine: ${line.name}: ${line.count} from packs of ${line.pack.size} at ${line.pack.cents}`)
	const bought = line.onlyHere ? (together ?? boughtAlone(line, rates)) : null
	const explained = explainLine(line, rates, words, bought)
	if (line.holding === 'own') return { name: line.name, costCents: zero, priceCents: zero, ...explained }
	const uses = usesOfLife(line, rates)
	const share = perUse(shareOfPack(line, rates), uses)
	const cost = bought === null ? share : perUse(bought.cents, uses)
	const writtenOff = line.holding === 'lent' && line.usesBefore >= uses
	return {
		name: line.name,
		costCents: writtenOff ? zero : cost,
		priceCents: times(share, rates.markup[line.kind]),
		...explained,
	}
}
