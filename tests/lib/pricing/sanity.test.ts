import { describe, expect, test } from 'vitest'
import { price } from '@/lib/pricing/price'
import { container, job, line, potOf18, words } from './sample'

/** 23 stems, 46 greens, 15 spillers and 4 clusters; 24 inches across, 3,716 cm². */
const squareOf24 = [
	line('birch', 'fresh', 'branch', 23, 1840, 10),
	line('noble fir', 'fresh', 'green', 46, 1275, 25),
	line('cedar', 'fresh', 'green', 15, 1160, 20),
	line('copper globes', 'ornament', 'cluster to make', 4, 5400, 6, { holding: 'lent' }),
]

const made = (n: number, openingCm2: number, lines: typeof potOf18) => {
	const { list, costs } = price(job({ containers: [container(n, { openingCm2, lines })] }), words)
	return { amount: list.parts[0]?.cents, work: costs.parts[0]?.work ?? [] }
}

// Sanity, not a law. Common practice, no published source: what such pots come to all round, and how long they take.
describe('a usual pot', () => {
	test.each([
		{ name: '18 inches, round', of: made(1, 1642, potOf18), from: 15_000, to: 30_000 },
		{ name: '24 inches, square', of: made(2, 3716, squareOf24), from: 30_000, to: 50_000 },
	])('$name, is priced between $from and $to cents', ({ of: { amount }, from, to }) => {
		expect(amount).toBeGreaterThanOrEqual(from)
		expect(amount).toBeLessThanOrEqual(to)
	})

	test('of 18 inches takes some 50 minutes on site', () => {
		// Without studio prep, and without making three clusters beforehand and storing them afterwards.
		const { work } = made(1, 1642, potOf18)
		const onSite = work
			.filter(({ what }) => what !== 'studio prep')
			.reduce((all, { minutes }) => all + minutes, -3 * (4 + 1))
		expect(onSite).toBeGreaterThan(40)
		expect(onSite).toBeLessThan(60)
	})
})
