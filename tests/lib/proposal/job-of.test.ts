import { describe, expect, test } from 'vitest'
import { openingCm2, soilLitres } from '@/lib/container/soil'
import type { Draft } from '@/lib/proposal/draft'
import { cardsOf, jobOf } from '@/lib/proposal/job-of'
import { cents } from '@/lib/units/cents'
import { containerId, draft, facts, first, materialId, placeId, typed } from './sample'

const job = (more: Partial<Draft> = {}, by = facts) =>
	jobOf({ ...draft, ...more }, more.options?.[0] ?? first(draft.options), by) ?? expect.fail('there is a container')

describe('what pricing needs to know of a draft', () => {
	test('each container with its opening, its soil and its lines in their packs', () => {
		const [urn, , box] = job().containers
		const [card] = facts.cards
		expect(urn).toMatchObject({
			id: containerId(1),
			place: placeId(1),
			name: 'Left urn',
			openingCm2: card && openingCm2(card),
			soilL: card && soilLitres(card),
			isNew: false,
		})
		expect(urn?.lines).toEqual([
			{
				name: 'birch',
				unit: 'stem',
				kind: 'fresh',
				piece: 'branch',
				piecesPerUnit: 1,
				count: 12,
				holding: 'sold',
				pack: { size: 10, cents: 1841, freightPercent: 0 },
				usesBefore: 0,
				onlyHere: false,
			},
			expect.objectContaining({ name: 'noble fir', count: 1.25, piecesPerUnit: 22 }),
		])
		expect(box).toMatchObject({ isNew: true, place: placeId(2) })
	})

	test('a visit for each door, with its way, its tax and whether all is taken down', () => {
		expect(job({ takeDown: true }).visits).toEqual([
			{
				place: placeId(1),
				name: 'Front door',
				taxMilliPercent: 6000,
				driveMinutes: 14,
				zoneCents: null,
				takeDown: true,
			},
			{
				place: placeId(2),
				name: 'Side door',
				taxMilliPercent: 7250,
				driveMinutes: 23,
				zoneCents: null,
				takeDown: true,
			},
		])
	})

	test('no visit where no container of the draft stands, and no extra there', () => {
		const front = job({ containers: draft.containers.slice(0, 2) })
		expect(front.visits.map(({ place }) => place)).toEqual([placeId(1)])
		expect(front.extras.map(({ key }) => key)).toEqual(['wreath'])
	})

	test('the season, the rates and their version, who pays, how new the design is', () => {
		expect(job({ design: 'repeat' })).toMatchObject({
			currency: 'USD',
			ratesVersion: 7,
			rates: facts.rates,
			quarter: 'winter',
			design: 'repeat',
			payer: { kind: 'business', netDays: 30, exemptCertificate: null },
			agreement: { is: 'none' },
			supplementCents: 0,
		})
	})

	test('a supplement beside a fixed price alone', () => {
		const options = [{ ...first(draft.options), supplementCents: cents(7501) }]
		const fixed = { is: 'fixed', cents: cents(95_000), containers: [containerId(1)] } as const
		expect(job({ options }).supplementCents).toBe(0)
		expect(job({ options, agreement: { ...fixed, containers: [...fixed.containers] } }).supplementCents).toBe(7501)
	})

	test.each([
		{ name: 'a material that is gone', line: typed(9, 'accent', 4) },
		{ name: 'fresh stems that are lent', line: typed(1, 'thriller', 4, 'lent') },
	])('leaves out $name', ({ line }) => {
		const options = [{ ...first(draft.options), pots: [{ container: containerId(1), lines: [line] }] }]
		expect(job({ options }).containers.map(({ lines }) => lines)).toEqual([[], [], []])
	})

	test('leaves out a material without a pack', () => {
		const birch = facts.materials.get(materialId(1)) ?? expect.fail('the sample has birch')
		const materials = new Map(facts.materials).set(birch.id, { ...birch, pack: null })
		expect(job({}, { ...facts, materials }).containers[0]?.lines.map(({ name }) => name)).toEqual(['noble fir'])
	})

	test('there is no job without a container of the client’s', () => {
		expect(jobOf({ ...draft, containers: [] }, first(draft.options), facts)).toBeNull()
		const foreign = [{ id: containerId(9), mayLeaveOut: false, isNew: false }]
		expect(jobOf({ ...draft, containers: foreign }, first(draft.options), facts)).toBeNull()
		expect(cardsOf({ ...draft, containers: [...foreign, ...draft.containers] }, facts)).toHaveLength(3)
	})
})
