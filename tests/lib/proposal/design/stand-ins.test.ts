import { describe, expect, test } from 'vitest'
import { standIns } from '@/lib/proposal/design/stand-ins'
import type { Facts, Material } from '@/lib/proposal/facts'
import { containerId, draft, facts, first, materialId } from '../sample'
import { winterMaterials } from './house-winter'

const more = (n: number, base: number, change: Partial<Material>): Material => ({
	...first(winterMaterials.slice(base)),
	id: materialId(n),
	...change,
})
const live = { kind: 'live', piece: 'plant', role: 'filler', unit: 'piece' } as const
const heath = more(40, 8, { ...live, name: 'heath', zone: 4 })
const all: readonly Material[] = [
	...winterMaterials.map((each) => (each.name === 'white birch' ? { ...each, inStock: 14 } : each)),
	more(41, 8, { ...live, name: 'hardy sedge', zone: 4, wants: ['shade'] }),
	more(42, 8, { ...live, name: 'tender sage', zone: 9 }),
	more(43, 0, { name: 'old dogwood', isRetired: true }),
	more(44, 0, { name: 'osier by weight', unit: 'kg', piecesPerUnit: 8 }),
	heath,
]
const known = (change: Partial<Facts> = {}): Facts => ({
	...facts,
	season: { quarter: 'winter', year: 2026 },
	materials: new Map(all.map((each) => [each.id, each])),
	...change,
})
const dogwood = materialId(21)
const of = (material = dogwood, container = draft.containers[0]?.id ?? null, in_ = known()) =>
	standIns(draft, in_, { material, container })
const named = (found: ReturnType<typeof of>) => found?.map(({ name }) => name)

describe('what can stand in for a material of a draft', () => {
	test('of its role, what is in storage first, and nothing that the studio has given up', () => {
		expect(named(of())).toEqual(['white birch', 'osier by weight', 'contorted hazel', 'gold dogwood'])
	})

	test('says why, and how it is counted where that differs', () => {
		const [birch, osier] = of() ?? []
		expect(birch).toMatchObject({ unit: 'stem', perUnit: 1, why: '14 in stock, another colour, as tall' })
		expect(osier).toMatchObject({
			...{ unit: 'kg', perUnit: 1 / 8 },
			why: 'the same colour to the eye, as tall, counted by the kg',
		})
	})

	test('a live plant has to stand the winter of the place, and in winter alone', () => {
		const cold = { sites: facts.sites.map((site) => ({ ...site, zone: 6 })) }
		const bright = { cards: facts.cards.map((card) => ({ ...card, light: 'shade' as const })) }
		const found = named(of(heath.id, null, known({ ...cold, ...bright })))
		expect(found).toContain('hardy sedge')
		expect(found).not.toContain('tender sage')
		const autumn = known({ ...cold, season: { quarter: 'autumn', year: 2026 } })
		expect(named(of(heath.id, null, autumn))).toContain('tender sage')
	})

	test('in the light of the container that it is asked for', () => {
		const cards = facts.cards.map((card) => ({
			...card,
			light: card.id === containerId(2) ? ('shade' as const) : ('sun' as const),
		}))
		expect(named(of(heath.id, containerId(2), known({ cards })))).toContain('hardy sedge')
		expect(named(of(heath.id, containerId(1), known({ cards })))).not.toContain('hardy sedge')
	})

	test('a dozen at most', () => {
		const many = Array.from({ length: 30 }, (_, n) => more(100 + n, 0, { name: `twig ${n}` }))
		const materials = new Map([...all, ...many].map((each) => [each.id, each] as const))
		expect(of(dogwood, null, known({ materials }))).toHaveLength(12)
	})

	test('of nothing that is known there is nothing', () => {
		expect(of(materialId(99))).toBeUndefined()
	})
})
