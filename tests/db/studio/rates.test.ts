import { describe, expect, test } from 'vitest'
import { readDraft } from '@/db/proposals/draft'
import { publish } from '@/db/proposals/publish'
import { rateEffects } from '@/db/studio/rate-effects'
import { readRates, saveRates } from '@/db/studio/save-rates'
import { must } from '@/demo/play/must'
import { defaultRates } from '@/lib/pricing/rates'
import { found, stranger, studio } from '../stage/studio'

const of = studio()
const dearer = { ...defaultRates, billedCentsPerHour: 9_000 }

describe('new rates', () => {
	test('are a version more, and the ones before stay', async () => {
		const designer = await of.as('designer')
		expect(await saveRates(designer, { version: 1, rates: dearer }, of.stamp())).toEqual({ ok: true, version: 2 })
		expect(await readRates(designer)).toEqual({ version: 2, rates: dearer })
	})

	test('are refused when others came between, or nothing is different', async () => {
		const designer = await of.as('designer')
		await saveRates(designer, { version: 1, rates: dearer }, of.stamp())
		const late = { version: 1, rates: { ...dearer, crew: 3 } }
		expect(await saveRates(designer, late, of.stamp())).toEqual({ ok: false, why: 'changed elsewhere' })
		const same = { version: 2, rates: dearer }
		expect(await saveRates(designer, same, of.stamp())).toEqual({ ok: false, why: 'nothing changed' })
	})
})

describe('what they would do to the open drafts', () => {
	test('is what the desk would say by them, and changes nothing', async () => {
		const designer = await of.as('designer')
		const effects = found(await rateEffects(designer, dearer, of.stamp()))
		const priced = effects.filter(({ was }) => was !== null)
		expect(priced.length).toBeGreaterThan(0)
		for (const { was, becomes } of priced)
			expect(becomes?.valueCents).toBeGreaterThanOrEqual(was?.valueCents ?? Number.NaN)
		expect(priced.some(({ was, becomes }) => (becomes?.valueCents ?? 0) > (was?.valueCents ?? 0))).toBe(true)
		expect((await readRates(designer))?.version).toBe(1)

		await saveRates(designer, { version: 1, rates: dearer }, of.stamp())
		const then = found(await rateEffects(designer, dearer, of.stamp()))
		for (const [index, { was }] of then.entries()) expect(was).toEqual(effects[index]?.becomes)
	})

	test('is what a draft then comes to when it is published', async () => {
		const designer = await of.as('designer')
		const proposal = of.cast().proposals.bicycles
		const effects = found(await rateEffects(designer, dearer, of.stamp()))
		const effect = found(effects.find((each) => each.proposal === proposal))
		await saveRates(designer, { version: 1, rates: dearer }, of.stamp())
		const { version } = found(await readDraft(designer, proposal, of.stamp()))
		must('publish', await publish(designer, { proposal, version, once: of.stamp().id<'once'>() }, of.stamp()))
		const row = stranger(of.folder(), (sqlite) =>
			sqlite
				.prepare('SELECT value_cents AS valueCents, margin_tenths AS marginTenths FROM proposal WHERE id = ?')
				.get(proposal),
		)
		expect(row).toEqual(effect.becomes)
		expect(effect.becomes).not.toEqual(effect.was)
	})
})
