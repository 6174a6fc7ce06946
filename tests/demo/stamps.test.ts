import { validate, version } from 'uuid'
import { describe, expect, test } from 'vitest'
import { stampsFrom } from '@/demo/stamps'
import { moment } from '@/lib/units/day'

const at = moment(new Date('2026-10-05T14:40:00.123Z'))
const ids = (seedText: string, count: number) => {
	const stamp = stampsFrom(seedText)(at)
	return Array.from({ length: count }, () => stamp.id<'thing'>())
}

describe('stamps for a play', () => {
	// RFC 9562, section 5.7, as the uuid library reads it.
	test('ids are UUIDs of version 7 that tell their millisecond', () => {
		for (const id of ids('cast', 50)) {
			expect(validate(id)).toBe(true)
			expect(version(id)).toBe(7)
			expect(Number.parseInt(id.replace('-', '').slice(0, 12), 16)).toBe(Date.parse(at))
		}
	})

	test('ids of one millisecond sort in the order in which they were asked for, and none comes twice', () => {
		const many = ids('cast', 3000)
		expect(many.toSorted()).toEqual(many)
		expect(new Set(many).size).toBe(3000)
	})

	test('two stamps of one play share the count', () => {
		const stamps = stampsFrom('cast')
		expect(stamps(at).id()).not.toBe(stamps(at).id())
		expect(stamps(at).salt()).not.toEqual(stamps(at).salt())
	})

	test('a salt has 16 bytes', () => {
		expect(stampsFrom('cast')(at).salt()).toHaveLength(16)
	})

	test('the same words give the same stamps, other words others', () => {
		expect(ids('cast', 5)).toEqual(ids('cast', 5))
		expect(ids('cast', 5)).not.toEqual(ids('other cast', 5))
	})
})
