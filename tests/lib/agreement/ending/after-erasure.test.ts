import { expect, test } from 'vitest'
import { afterErasure } from '@/lib/agreement/ending/after-erasure'
import { day } from '@/lib/units/day'

const today = day('2026-10-06')

test.each([
	['out', 'to be signed', null, 'ended', null, 'taken back'],
	['out, while another holds', 'to be signed', '2027-11-30', 'ended', '2026-10-06', 'ended'],
	['signed', 'signed', '2027-11-30', 'ended', '2026-10-06', 'ended'],
	['signed and run out', 'signed', '2026-10-05', 'signed', '2026-10-05', null],
	['signed and over today', 'signed', '2026-10-06', 'signed', '2026-10-06', null],
	['declined', 'declined', null, 'declined', null, null],
	['declined, while another holds', 'declined', '2026-12-31', 'ended', '2026-10-06', 'ended'],
	['ended', 'ended', null, 'ended', null, null],
] as const)('%s', (_, state, until, to, holds, is) => {
	const holdsUntil = until === null ? null : day(until)
	expect(afterErasure({ state, holdsUntil }, today)).toEqual({ to, holdsUntil: holds, is })
})
