import { describe, expect, test } from 'vitest'
import { isBackupDue } from '@/lib/record/is-backup-due'
import { moment } from '@/lib/units/day'

const at = (text: string) => moment(new Date(`${text}Z`))

describe('a copy of the studio’s file', () => {
	test.each([
		{ name: 'there is none yet', newest: null, now: '2026-10-06T16:00', due: true },
		{ name: 'of this morning', newest: '2026-10-06T03:00', now: '2026-10-06T16:00', due: false },
		{ name: 'twenty hours old', newest: '2026-10-06T03:00', now: '2026-10-06T23:00', due: false },
		{ name: 'a moment older', newest: '2026-10-06T03:00', now: '2026-10-06T23:00:00.001', due: true },
		{
			name: 'of a machine that slept through three nights',
			newest: '2026-10-03T02:41',
			now: '2026-10-06T09:12',
			due: true,
		},
		{ name: 'of a clock that was a little ahead', newest: '2026-10-06T17:30', now: '2026-10-06T16:00', due: false },
		{ name: 'of a clock that was a month ahead', newest: '2026-11-06T03:00', now: '2026-10-06T16:00', due: true },
	])('$name: another is due: $due', ({ newest, now, due }) => {
		expect(isBackupDue(newest === null ? null : at(newest), at(now))).toBe(due)
	})
})
