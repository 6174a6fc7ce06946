import type { Cents } from '@/lib/units/cents'
import type { JobLine } from '../job'
import type { Rates } from '../rates'
import type { Bought } from './bought'
import { usesOfLife } from './uses-of-life'

/** How money reads in the studio's currency; handed in, so that the core knows no locale. */
export type Words = { readonly money: (amount: Cents) => string }

const plural = {
	stem: 'stems',
	kg: 'kg',
	litre: 'litres',
	string: 'strings',
	piece: 'pieces',
} as const

const counted = ({ count, unit }: JobLine) => `${count} ${count === 1 ? unit : plural[unit]}`

/** 10 becomes "1.10", 12.5 becomes "1.125": a per cent as the factor that it adds. */
const factor = (percent: number) => {
	const text = (1 + percent / 100).toFixed(5).replace(/0+$/, '')
	return text.padEnd(4, '0')
}

function shareInWords(line: JobLine, rates: Rates, { money }: Words): string {
	const loss = rates.lossPercent[line.kind]
	const freight = line.pack.freightPercent
	const uses = usesOfLife(line, rates)
	return [
		counted(line),
		loss > 0 ? ` × ${factor(loss)}` : '',
		` × ${money(line.pack.cents)}`,
		freight > 0 ? ` × ${factor(freight)}` : '',
		` ÷ ${line.pack.size}`,
		uses > 1 ? ` ÷ ${uses} uses` : '',
	].join('')
}

/** The working of one line, as one would write it on the back of an envelope. */
export function explainLine(
	line: JobLine,
	rates: Rates,
	words: Words,
	bought: Bought | null,
): { price: string; cost: string | null } {
	if (line.holding === 'own') return { price: `${counted(line)}, the client’s own`, cost: null }
	const price = `${shareInWords(line, rates, words)} × ${rates.markup[line.kind]}`
	return { price, cost: costInWords(line, rates, words, bought) }
}

function costInWords(line: JobLine, rates: Rates, { money }: Words, bought: Bought | null): string | null {
	const uses = usesOfLife(line, rates)
	if (line.holding === 'lent' && line.usesBefore >= uses) return `written off after ${uses} uses`
	if (bought === null) return null
	const freight = line.pack.freightPercent > 0 ? ` × ${factor(line.pack.freightPercent)}` : ''
	const spread = uses > 1 ? ` ÷ ${uses} uses` : ''
	const part = bought.isShared ? 'its share of ' : ''
	return `nobody else uses it: ${part}${bought.packs} × ${money(line.pack.cents)}${freight}${spread}`
}
