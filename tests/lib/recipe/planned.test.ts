import { describe, expect, test } from 'vitest'
import { contentsKg, isCluster, lineKg, merged, named, planned } from '@/lib/recipe/planned'
import { accent, by, cluster, green, materialId, put } from './sample'

const fir = green(1, 'noble fir', { kgEach: 0.15 })
const pine = green(2, 'white pine', { unit: 'kg', piecesPerUnit: 20, kgEach: 0.05 })
const moss = green(3, 'moss', { unit: 'litre', kgEach: null })
const pods = accent(4, 'pods', { piecesPerUnit: 12, kgEach: 0.02 })

describe('planned lines', () => {
	test('take their materials; what names none, or comes to nothing, is passed over', () => {
		const lines = [
			{ material: fir.id, role: 'filler', count: 9 },
			{ material: pine.id, role: 'filler', count: 0 },
			{ material: materialId(99), role: 'accent', count: 4 },
			{ material: pods.id, role: 'accent', count: 2 },
		] as const
		expect(planned(lines, by([fir, pine, pods]))).toEqual([put(fir, 9), put(pods, 2)])
	})

	test.each([
		{ name: 'a stem of its weight', line: put(fir, 8), kg: 1.2 },
		{ name: 'bought by the kg', line: put(pine, 1.75), kg: 1.75 },
		{ name: 'pieces of a bunch', line: put(pods, 3), kg: 0.72 },
		{ name: 'not known', line: put(moss, 6), kg: null },
	])('weight: $name', ({ line, kg }) => {
		if (kg === null) expect(lineKg(line)).toBeNull()
		else expect(lineKg(line)).toBeCloseTo(kg, 9)
	})

	test('a pot weighs what is known of it', () => {
		expect(contentsKg([put(fir, 8), put(moss, 6), put(pine, 1.75)])).toBeCloseTo(2.95, 9)
		expect(contentsKg([])).toBe(0)
	})

	test('names, each once', () => {
		expect(named([put(fir, 2), put(pine, 3), put(fir, 4)])).toBe('noble fir and white pine')
	})

	test('lines of one material and role are one', () => {
		const rim = { ...put(fir, 5), role: 'spiller' as const }
		expect(merged([put(fir, 2), put(pine, 3), rim, put(fir, 4)])).toEqual([put(fir, 6), put(pine, 3), rim])
	})

	test('a cluster is one accent', () => {
		expect([cluster(5, 'globes'), cluster(6, 'globes', { unit: 'piece' }), pods].map(isCluster)).toEqual([
			true,
			true,
			false,
		])
		expect(isCluster({ piece: 'cluster to make' })).toBe(true)
	})
})
