import { and, eq, isNull } from 'drizzle-orm'
import { describe, expect, test } from 'vitest'
import { read, write } from '@/db/open'
import { priceDraft } from '@/db/proposals/desk/price-draft'
import { pack } from '@/db/schema'
import { found, studio } from '../stage/studio'
import { stepsOf } from './steps'

const of = studio()
const { draft, idOf } = stepsOf(of)

const desk = async () =>
	priceDraft(await of.as('designer'), { proposal: idOf('bakery'), draft: (await draft('bakery')).draft }, of.stamp())

/** A second pack of a material that the bakery's draft names, at six tenths of the first one's price. */
async function offerAnother(freightPercent: number): Promise<void> {
	const [line] = (await draft('bakery')).draft.options.flatMap(({ pots }) => pots.flatMap(({ lines }) => lines))
	const open = and(eq(pack.materialId, found(line).material), isNull(pack.retiredAt))
	const first = found(read((db) => db.select().from(pack).where(open).all())[0])
	const other = { priceCents: Math.round(first.priceCents * 0.6), freightPercent, id: of.stamp().id<'pack'>() }
	write((tx) =>
		tx
			.insert(pack)
			.values({ ...first, ...other })
			.run(),
	)
}

// The first pack has 12 % freight at most: 0.6 × 2.00 is dearer than 1.12, and 0.6 × 1.06 is cheaper than 1.
describe('of two packs the one is bought that is cheapest per unit with its freight', () => {
	test.each([
		{ freight: 6, isTaken: true },
		{ freight: 100, isTaken: false },
	])('six tenths of the price at $freight % freight: $isTaken', async ({ freight, isTaken }) => {
		const before = await desk()
		await offerAnother(freight)
		expect(JSON.stringify(await desk()) !== JSON.stringify(before)).toBe(isTaken)
	})
})
