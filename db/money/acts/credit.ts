import type { Viewer } from '@/lib/access/viewer'
import type { ClientId } from '@/lib/units/id'
import { write } from '../../open'
import type { Stamp } from '../../stamp'
import type { Denied } from '../../viewer'
import { type Crediting, type WrittenCredit, writeCredit } from '../bills/write'
import { findAccount } from '../find'

export type CreditGiven = WrittenCredit | Denied

/** Takes off an invoice what it should not have asked for. */
export async function creditInvoice(
	viewer: Viewer,
	{ client, ...crediting }: Crediting & { readonly client: ClientId },
	stamp: Stamp,
): Promise<CreditGiven> {
	return write((tx): CreditGiven => {
		const found = findAccount(tx, viewer, 'change accounts', client, stamp)
		return found.ok ? writeCredit(tx, stamp, viewer, found, crediting) : found
	})
}
