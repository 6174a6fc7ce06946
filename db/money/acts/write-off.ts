import type { Viewer } from '@/lib/access/viewer'
import type { InvoiceNumber } from '@/lib/money/invoice/number'
import type { Cents } from '@/lib/units/cents'
import type { ClientId } from '@/lib/units/id'
import { write } from '../../open'
import type { Stamp } from '../../stamp'
import { enterIn, type Kept } from '../enter'

export type WriteOff = {
	readonly client: ClientId
	readonly invoice: InvoiceNumber
	readonly cents: Cents
	readonly reason: string
}

/** What nobody will pay any more is given up today, with the reason. */
export async function writeOff(viewer: Viewer, { client, ...off }: WriteOff, stamp: Stamp): Promise<Kept> {
	return write((tx) =>
		enterIn(tx, viewer, { client }, (on) => ({ is: 'write-off', id: stamp.id<'entry'>(), on, ...off }), stamp),
	)
}
