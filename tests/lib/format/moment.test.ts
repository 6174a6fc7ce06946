import { expect, test } from 'vitest'
import { momentWords } from '@/lib/format/moment'
import { moment } from '@/lib/units/day'

test.each([
	['2026-10-09T18:05:59Z', 'America/New_York', '9 October 2026, 14:05'],
	['2026-10-10T03:59:00Z', 'America/New_York', '9 October 2026, 23:59'],
	['2026-10-10T04:00:00Z', 'America/New_York', '10 October 2026, 00:00'],
	['2026-12-31T23:30:00Z', 'Pacific/Auckland', '1 January 2027, 12:30'],
])('%s in %s is %s', (at, timeZone, words) => {
	expect(momentWords(moment(new Date(at)), timeZone)).toBe(words)
})
