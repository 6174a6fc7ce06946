import { describe, expect, test } from 'vitest'
import { read } from '@/db/open'
import { aroundIn, doorsIn } from '@/db/proposals/desk/around'
import { priceDraft } from '@/db/proposals/desk/price-draft'
import { factsFor } from '@/db/proposals/facts'
import { findProposal } from '@/db/proposals/find'
import { readOffer } from '@/db/proposals/read-offer'
import { paint } from '@/demo/cast/palettes'
import type { WinterKey } from '@/demo/cast/proposals/proposals'
import type { Draft } from '@/lib/proposal/draft'
import { found, stranger, studio } from '../stage/studio'
import { stepsOf } from './steps'

const of = studio()
const { draft, redraft, idOf, steer } = stepsOf(of)

const firstPalette = ({ options: [option] }: Draft) => found(option).palette
const wearing = (palette: ReturnType<typeof firstPalette>) => (kept: Draft) => ({
	...kept,
	options: kept.options.map((option, index) => (index === 0 ? { ...option, palette } : option)),
})

/** What is said of the first palette beyond the recipes themselves. */
async function said(key: WinterKey): Promise<string[]> {
	const asked = { proposal: idOf(key), draft: (await draft(key)).draft }
	const desk = found(await priceDraft(await of.as('designer'), asked, of.stamp()))
	const pots = desk.options[0]?.pots ?? []
	return pots.flatMap(({ open }) =>
		open.filter(({ key: check }) => check.startsWith('palette')).map(({ says }) => says),
	)
}

describe('the neighbour’s palette', () => {
	test('is said on both desks in Tern Lane, and on no other', async () => {
		const theirs = firstPalette((await draft('bookshop')).draft)
		const before = await said('bicycles')
		expect(before.filter((says) => says.includes('Dunnacre Books'))).toEqual([])
		await redraft('bicycles', wearing(theirs))
		await redraft('vet', wearing(theirs))
		expect(
			(await said('bicycles')).filter((says) => says.startsWith('Dunnacre Books, in the same street')),
		).toHaveLength(1)
		expect(
			(await said('bookshop')).filter((says) => says.startsWith('Ostleigh Cycles, in the same street')),
		).toHaveLength(1)
		expect((await said('vet')).filter((says) => says.includes('in the same street'))).toEqual([])
	})

	test('is nothing that a client is shown', async () => {
		await redraft('inn', wearing(firstPalette((await draft('chandlery')).draft)))
		expect((await said('chandlery')).join()).toContain('The Three Hawsers Inn, in the same street')
		const page = await readOffer(await of.as('chandleryApprover'), idOf('chandlery'), of.stamp())
		expect(JSON.stringify(found(page))).not.toContain('Hawsers Inn')
	})

	test('is forgotten once theirs is withdrawn', async () => {
		await redraft('inn', wearing(firstPalette((await draft('chandlery')).draft)))
		expect((await said('inn')).join()).toContain('Sallowby Ship Chandlery, in the same street')
		await steer('chandlery', 'withdraw')
		expect(await said('inn')).toEqual([])
	})
})

describe('the doors of a season', () => {
	/** What every draft of the winter is held against: with the doors that may be near read, and with all of them. */
	async function both() {
		const designer = await of.as('designer')
		return read((db) =>
			Object.values(of.cast().proposals).flatMap((id) => {
				const row = findProposal(db, designer, 'see the draft', id, of.stamp())
				if (!row.ok || designer.is !== 'staff') return []
				const facts = factsFor(db, row, designer.person)
				return [[aroundIn(db, row, facts), aroundIn(db, row, facts, doorsIn(db, row.season.id))] as const]
			}),
		)
	}

	test('are the same whether all are read or those alone that may be near', async () => {
		stranger(of.folder(), (sqlite) => {
			const written = [
				'1 TERN LN.\nWrenholt',
				'2b Tern Lane, Wrenholt',
				'The Loft\n3 T’ern Lane, Wrenholt',
				'9 Court Lane, X',
			]
			const places = sqlite.prepare('SELECT id FROM place ORDER BY id').pluck().all()
			places.forEach((id, n) => {
				sqlite
					.prepare('UPDATE place SET address = ? WHERE id = ? AND ? % 3 > 0')
					.run(written[n % written.length], id, n)
			})
		})
		const all = await both()
		expect(all.length).toBeGreaterThan(12)
		expect(all.filter(([{ neighbours }]) => neighbours.length > 1).length).toBeGreaterThan(5)
		for (const [near, whole] of all) expect(near).toEqual(whole)
	})
})

describe('last year’s palette', () => {
	/** The autumn that is over becomes a winter, so many years before this one. */
	const moved = (years: number) =>
		stranger(of.folder(), (sqlite) =>
			sqlite.exec(`UPDATE season SET quarter = 'winter', year = year - ${years} WHERE quarter = 'autumn'`),
		)
	const again = () => redraft('bakery', wearing(paint('harvest')))
	const same = /^These are nearly the colours that they chose last year, “[^”]+”:/

	test('is what was chosen a year ago in the same quarter', async () => {
		moved(1)
		expect(await said('bakery')).toEqual([])
		await again()
		expect(await said('bakery')).toEqual([expect.stringMatching(same)])
	})

	test('is not that of another quarter, nor of two years ago', async () => {
		await again()
		expect(await said('bakery')).toEqual([])
		moved(2)
		expect(await said('bakery')).toEqual([])
	})

	test('is not what another client chose', async () => {
		moved(1)
		await redraft('vet', wearing(paint('harvest')))
		expect((await said('vet')).filter((says) => same.test(says))).toEqual([])
	})
})
