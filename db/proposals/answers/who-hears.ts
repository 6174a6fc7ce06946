import type { PersonId } from '@/lib/units/id'
import type { Tx } from '../../open'
import type { Message } from '../../schema'
import { contactsOf, designers } from '../recipients'
import type { Open } from './open'

type Mails = readonly { readonly message: Message; readonly to: readonly PersonId[] }[]

/** The studio hears of an answer, but for whoever took it down; of one by phone the client has a receipt as well. */
export function whoHears(
	tx: Tx,
	{ found, word, by }: Open,
	{ studio, client }: { readonly studio: Message; readonly client?: Message },
): Mails {
	const { clientId } = found.row
	const us = { message: studio, to: designers(tx).filter((person) => word.is === 'client' || person !== by) }
	if (client !== undefined) return [{ message: client, to: contactsOf(tx, clientId) }, us]
	if (word.is === 'client') return [us]
	return [{ message: studio, to: contactsOf(tx, clientId, { whoMayApprove: true }) }, us]
}
