import { describe, expect, test } from 'vitest'
import { markSeen } from '@/db/proposals/seen'
import type { WinterKey } from '@/demo/cast/proposals/proposals'
import type { AnyPersonKey } from '@/demo/play/stage'
import { changesOf, refused } from '../stage/rows'
import { fillDisk, stranger, studio, utc } from '../stage/studio'
import { stepsOf } from './steps'

const of = studio()
const { idOf, publish } = stepsOf(of)

const see = async (who: AnyPersonKey | 'nobody' | 'system', key: WinterKey, at = of.cast().now) =>
	markSeen(await of.as(who), idOf(key), of.stamp(at))
const seenAt = (key: WinterKey) =>
	stranger(of.folder(), (sqlite) => sqlite.prepare('SELECT seen_at FROM proposal WHERE id = ?').pluck().get(idOf(key)))

describe('seen', () => {
	test.each(['dentalApprover', 'dentalViewer'] as const)('by %s is one line of the record', async (who) => {
		const { did } = await changesOf(of.folder(), () => see(who, 'dental'))
		expect(did).toEqual({ event: '+1', proposal: '~1' })
		expect(seenAt('dental')).toBe(of.cast().now)
	})

	test('once: who looks again, or after another, writes nothing', async () => {
		await see('dentalViewer', 'dental')
		for (const who of ['dentalViewer', 'dentalApprover'] as const)
			await refused(of.folder(), () => see(who, 'dental', utc('2026-10-06T20:00')))
		expect(seenAt('dental')).toBe(of.cast().now)
	})

	test('anew with the next revision', async () => {
		await see('dentalViewer', 'dental')
		await publish('dental', utc('2026-10-06T18:00'))
		expect(seenAt('dental')).toBeNull()
		const { did } = await changesOf(of.folder(), () => see('dentalApprover', 'dental', utc('2026-10-06T19:00')))
		expect(did).toEqual({ event: '+1', proposal: '~1' })
	})

	test.each(['designer', 'helper', 'bakeryApprover', 'nobody', 'system'] as const)('not by %s', async (who) => {
		await refused(of.folder(), () => see(who, 'dental'))
	})

	test('not before there is something to see', async () => {
		await refused(of.folder(), () => see('bookshopApprover', 'bookshop'))
	})

	test('not without its line', async () => {
		fillDisk(of.folder(), 'event')
		await refused(of.folder(), () => expect(see('dentalViewer', 'dental')).rejects.toThrow('the disk is full'))
	})
})
