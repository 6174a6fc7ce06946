import type { Moment } from '@/lib/units/day'
import type { Id } from '@/lib/units/id'

/** The clock and the dice of one act, handed in: `db/` has neither. */
export type Stamp = {
	readonly at: Moment
	/** A fresh UUID v7 (RFC 9562). */
	readonly id: <Of extends string>() => Id<Of>
	/** 16 fresh random bytes. */
	readonly salt: () => Uint8Array
	/** Key of the form that is being gone through: an act that appends a line with it goes through once. */
	readonly once?: Id<'once'>
}
