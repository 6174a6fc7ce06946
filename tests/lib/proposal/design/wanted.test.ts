import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { wantedIn } from '@/lib/proposal/design/wanted'
import type { Facts } from '@/lib/proposal/facts'
import { wantedFor } from '@/lib/proposal/start/fresh'
import { hardiness } from '@/lib/recipe/check/plants/hardiness'
import { planned } from '@/lib/recipe/planned'
import { type Quarter, quarters } from '@/lib/season/season'
import { where } from '../../recipe/check/sample'
import { containerId, draft, facts, first } from '../sample'

const lights = ['sun', 'part', 'shade'] as const
const zoned: Facts = {
	...facts,
	sites: facts.sites.map((site, n) => ({ ...site, zone: n === 0 ? 5 : 8.5 })),
	cards: facts.cards.map((card, n) => ({ ...card, light: lights[n] ?? 'part' })),
}
const at = (n: number | null, of = zoned) => wantedIn(draft, of, n === null ? null : containerId(n))

describe('what something is looked for with', () => {
	test('is the light of its container and the zone of its place', () => {
		expect([1, 2, 3].map((n) => at(n))).toEqual([
			{ month: 11, zone: 5, light: 'sun', lengths: 'in' },
			{ month: 11, zone: 5, light: 'part', lengths: 'in' },
			{ month: 11, zone: 8.5, light: 'shade', lengths: 'in' },
		])
	})

	test('is that of the first container of the draft where none is named', () => {
		expect(at(null)).toEqual(at(1))
		expect(wantedIn({ ...draft, containers: draft.containers.slice(2) }, zoned)).toEqual(at(3))
		expect(wantedIn({ ...draft, containers: [] }, zoned)).toMatchObject({ zone: null, light: 'part' })
	})

	test('asks for hardiness in the season in which it is checked, and in no other', () => {
		const lantana = { ...first([...facts.materials.values()]), kind: 'live', zone: 10 } as const
		const lines = planned([{ material: lantana.id, role: 'filler', count: 3 }], new Map([[lantana.id, lantana]]))
		const isChecked = (quarter: Quarter) => hardiness(lines, where({ quarter, zone: 5 })).length > 0
		const isAsked = (quarter: Quarter) => at(1, { ...zoned, season: { quarter, year: 2026 } }).zone !== null
		expect(quarters.filter(isAsked)).toEqual(quarters.filter(isChecked))
		expect(quarters.filter(isAsked)).toEqual(['winter'])
	})

	test('is the same for a draft that is started as for one on the desk', () => {
		fc.assert(
			fc.property(fc.constantFrom(1, 2, 3, null), fc.constantFrom(...quarters), (n, quarter) => {
				const of = { ...zoned, season: { quarter, year: 2026 } }
				const container = n === null ? null : containerId(n)
				expect(wantedFor({ draft, facts: of, site: [] }, container)).toEqual(wantedIn(draft, of, container))
			}),
		)
	})
})
