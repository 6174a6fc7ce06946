import type { Moment } from '../../units/day'

/** How long a proof of the mailbox is good for a signature: a day from when the session began by it. */
const freshMs = 86_400_000

export const isFresh = (provenAt: Moment, now: Moment): boolean => Date.parse(now) - Date.parse(provenAt) < freshMs
