import type { Viewer } from '@/lib/access/viewer'
import type { Means } from '@/lib/money/ledger/entry'
import type { Cents } from '@/lib/units/cents'
import type { Day } from '@/lib/units/day'
import type { ClientId } from '@/lib/units/id'
import { write } from '../../open'
import type { Stamp } from '../../stamp'
import { enterIn, type Kept } from '../enter'

export type Refund = {
	readonly client: ClientId
	readonly on: Day
	readonly cents: Cents
	readonly means: Means
	readonly reference: string
}

/** What was kept for a client goes back to them. */
export async function refund(viewer: Viewer, { client, ...paid }: Refund, stamp: Stamp): Promise<Kept> {
	return write((tx) =>
		enterIn(tx, viewer, { client }, () => ({ is: 'refund', id: stamp.id<'entry'>(), ...paid }), stamp),
	)
}
