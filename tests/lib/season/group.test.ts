import { expect, test } from 'vitest'
import { kept } from '@/lib/proposal/state'
import { groupOf, groups } from '@/lib/season/group'

test.each([
	{ state: 'waiting for an answer', is: 'waiting for them' },
	{ state: 'drafting', is: 'waiting for us' },
	{ state: 'change asked for', is: 'waiting for us' },
	{ state: 'approved', is: 'settled' },
	{ state: 'skipped', is: 'settled' },
	{ state: 'cancelled', is: 'settled' },
	{ state: 'installed', is: 'settled' },
	{ state: 'withdrawn', is: 'settled' },
	{ state: 'lapsed', is: 'settled' },
] as const)('$state: $is', ({ state, is }) => {
	expect(groupOf(state)).toBe(is)
})

test('every state is in one of the three groups, and only one state waits for the client', () => {
	const all = [...kept, 'lapsed' as const]
	for (const state of all) expect(groups).toContain(groupOf(state))
	expect(all.filter((state) => groupOf(state) === 'waiting for them')).toEqual(['waiting for an answer'])
})
