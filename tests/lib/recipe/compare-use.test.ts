import { describe, expect, test } from 'vitest'
import { compareUse } from '@/lib/recipe/compare-use'
import { materialId } from './sample'

const [birch, fir, pine, cones] = [1, 2, 3, 4].map(materialId)
const line = (material = materialId(0), count = 0) => ({ material, count })

describe('planned and used', () => {
	test('line by line, in the order of the plan, what was not planned last', () => {
		const plan = [line(fir, 20), line(birch, 12), line(fir, 4), line(pine, 0.6)]
		const used = [line(cones, 5), line(birch, 12), line(fir, 21), line(pine, 0.7)]
		expect(compareUse(plan, used)).toEqual([
			{ material: fir, planned: 24, used: 21, difference: -3 },
			{ material: birch, planned: 12, used: 12, difference: 0 },
			{ material: pine, planned: 0.6, used: 0.7, difference: 0.1 },
			{ material: cones, planned: 0, used: 5, difference: 5 },
		])
	})

	test('what was not used at all', () => {
		expect(compareUse([line(birch, 7)], [])).toEqual([{ material: birch, planned: 7, used: 0, difference: -7 }])
		expect(compareUse([], [])).toEqual([])
	})
})
