import type { Means } from '@/lib/money/ledger/entry'
import type { ClientKey } from './clients'

/** As it stands at the foot of every invoice of the studio. */
export const payWords =
	'By check to Sedge & Lantern, 3 Ropewalk Yard, Wrenholt, or by transfer to the account on our card. Please name the invoice.'

export type Habit = {
	/** How many days after an invoice was written it is paid. */
	readonly days: number
	readonly means: Means
	readonly reference: string
	/** From that day on nothing comes any more. */
	readonly until?: number
}

/** How they pay; who is not named has not paid anything yet. */
export const habits: { readonly [Key in ClientKey]?: Habit } = {
	bakery: { days: 12, means: 'check', reference: 'Check 1187' },
	inn: { days: 3, means: 'bank transfer', reference: 'Hawsers house account', until: -60 },
	creditUnion: { days: 15, means: 'bank transfer', reference: 'PO-3102' },
	clapboard: { days: 2, means: 'check', reference: 'Check 402' },
	fieldstone: { days: 4, means: 'check', reference: 'Check 96' },
	stucco: { days: 1, means: 'bank transfer', reference: '' },
	approved: { days: 2, means: 'bank transfer', reference: 'Brackwater, pots' },
	skipped: { days: 3, means: 'cash', reference: '' },
	withdrawn: { days: 2, means: 'check', reference: 'Check 771' },
	cancelled: { days: 2, means: 'check', reference: 'Check 315' },
	installed: { days: 1, means: 'bank transfer', reference: 'Ambrelow' },
}

/** What was paid of the oldest invoice that was open. */
export const parts: readonly {
	readonly on: number
	readonly at: string
	readonly client: ClientKey
	readonly cents: number
	readonly means: Means
	readonly reference: string
}[] = [{ on: -33, at: '15:25', client: 'inn', cents: 12_000, means: 'bank transfer', reference: 'Hawsers, first part' }]
