import { v7 } from 'uuid'
import type { Things } from '../site/things'
import type { Fields } from './forms'

type Form = (things: Things) => Fields
const once = () => ['once', v7()] as const
const yesterday = () => new Date(Date.now() - 86_400_000).toISOString().slice(0, 10)
const paid = ({ client }: Things): Fields => [
	once(),
	['client', client],
	['on', yesterday()],
	['amount', '12.50'],
	['means', 'check'],
	['reference', '1042'],
]
const off = ({ client, invoice }: Things): Fields => [
	once(),
	['client', client],
	['invoice', invoice ?? ''],
	['amount', '3.20'],
	['reason', 'One branch too few.'],
]

/** What the studio writes into an account. */
export const moneyForms: Readonly<Record<string, Form>> = {
	billWhatIsDue: ({ client }) => [once(), ['client', client]],
	remindWhoIsLate: ({ client }) => [once(), ['client', client]],
	payIn: (things) => [...paid(things), ['invoice', '']],
	payBack: paid,
	giveUp: off,
	creditOne: off,
	undo: ({ client, entry }) => [once(), ['client', client], ['entry', entry ?? ''], ['reason', 'Typed twice.']],
	savePayWords: () => [once(), ['payWords', 'By check, to 4 Quay Lane.']],
}
