import type { Viewer } from '@/lib/access/viewer'
import type { EntryId } from '@/lib/money/ledger/entry'
import type { Day } from '@/lib/units/day'
import type { ClientId } from '@/lib/units/id'
import { write } from '../../open'
import type { Stamp } from '../../stamp'
import { enterIn, type Kept } from '../enter'

export type Undoing = {
	readonly client: ClientId
	readonly entry: EntryId
	readonly reason: string
}

/** An entry that was a mistake is undone today by another; neither is ever taken away. */
export async function undoEntry(viewer: Viewer, { client, entry, ...rest }: Undoing, stamp: Stamp): Promise<Kept> {
	const make = (on: Day) => ({ is: 'counter-entry', id: stamp.id<'entry'>(), on, of: entry, ...rest })
	return write((tx) => enterIn(tx, viewer, { client }, make, stamp))
}
