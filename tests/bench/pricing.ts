import { price } from '@/lib/pricing/price'
import { everything } from '@/lib/pricing/quote/choice'
import { costing } from '@/lib/pricing/quote/costing'
import { quote } from '@/lib/pricing/quote/quote'
import { container, job, placeId, words } from '../lib/pricing/sample'
import { median, row } from './row'

/** A three-container option with seven lines each, as a front door has it. */
const option = job({
	containers: [1, 2, 3].map((n) => container(n, { place: placeId(1) })),
})

function once(): void {
	const { list, costs } = price(option, words)
	quote(list, everything)
	costing(list, costs, everything)
}

function msFor(count: number): number {
	const start = process.hrtime.bigint()
	for (let n = 0; n < count; n += 1) once()
	return Number(process.hrtime.bigint() - start) / 1e6
}

msFor(500)
const times = [100, 1_000, 10_000].map((count) => ({ count, ms: median([msFor(count), msFor(count), msFor(count)]) }))
for (const { count, ms } of times)
	row(`price, quote and costing of ${count} options`, `${ms.toFixed(1)} ms`, 'linear', ms < count)
const [few, , many] = times
const perSecond = Math.round(10_000 / ((many?.ms ?? Number.NaN) / 1000))
row('options priced per second on one core', String(perSecond), 'at least 2,000', perSecond >= 2000)
const growth = (many?.ms ?? 0) / 100 / (few?.ms ?? 1)
row('10,000 options against 100 times 100', growth.toFixed(2), 'at most 1.5', growth <= 1.5)
