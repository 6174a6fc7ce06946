import type { Cents } from '../../units/cents'
import type { Day } from '../../units/day'
import type { Charge } from '../charge'
import type { InvoiceNumber } from '../invoice/number'

/** What of an approval or an agreement is asked for by one invoice. */
export type BillPart =
	| { readonly is: 'whole' | 'deposit' | 'balance' | 'remains' }
	| { readonly is: 'instalment'; readonly nth: number; readonly of: number }

/** The day that it is asked for, and the day by which it is to be paid: `netDays` later. */
export type Dated = { readonly on: Day; readonly netDays: number }

/** Something to be asked for, once: no two bills have the same key. `dated` is null while nobody knows when. */
export type Bill = {
	readonly key: string
	readonly part: BillPart
	readonly dated: Dated | null
	readonly charge: Charge
}

/** An invoice of a bill as it stands: what is left of it after credit notes and write-offs, paid or not. */
export type Issued = {
	readonly key: string
	readonly number: InvoiceNumber
	readonly leftCents: Cents
}
