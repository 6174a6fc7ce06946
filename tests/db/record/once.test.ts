import { describe, expect, test } from 'vitest'
import { write } from '@/db/open'
import { isFirst } from '@/db/record/once'
import { rowsIn } from '../stage/rows'
import { studio } from '../stage/studio'

const of = studio()

describe('the key of a form', () => {
	test('goes through once, and says who sent it and when', async () => {
		const [viewer, key] = [await of.as('bakeryApprover'), of.once()]
		expect(write((tx) => isFirst(tx, of.stamp(), viewer, key))).toBe(true)
		expect(write((tx) => isFirst(tx, of.stamp(), viewer, key))).toBe(false)
		const kept = JSON.stringify([key, `contact ${of.cast().people.bakeryApprover.id}`, of.cast().now])
		expect(rowsIn(of.folder()).once).toContainEqual(kept)
	})

	test('once, whoever comes with it', async () => {
		const key = of.once()
		const [one, other] = [await of.as('bakeryApprover'), await of.as('bakeryViewer')]
		expect(write((tx) => [isFirst(tx, of.stamp(), one, key), isFirst(tx, of.stamp(), other, key)])).toEqual([
			true,
			false,
		])
	})

	test('is forgotten with a change that did not stand', async () => {
		const [viewer, key] = [await of.as('designer'), of.once()]
		expect(() =>
			write((tx) => {
				isFirst(tx, of.stamp(), viewer, key)
				throw new Error('the lamp went out')
			}),
		).toThrow('the lamp went out')
		expect(write((tx) => isFirst(tx, of.stamp(), viewer, key))).toBe(true)
	})
})
