import type { Brand } from '../units/brand'
import type { ClientId, PersonId } from '../units/id'

/** What a contact may: approve and sign, look and see what is owed and paid, or look only. */
export const mays = ['approve', 'pay', 'look'] as const
export type May = (typeof mays)[number]

/** As the record keeps it: whoever approves sees money anyway. */
type Kept = { readonly may: 'approve' | 'look'; readonly seesMoney: boolean }
export const mayOf = ({ may, seesMoney }: Kept): May => (may === 'look' && seesMoney ? 'pay' : may)
export const keptMay = (may: May): Kept => ({ may: may === 'pay' ? 'look' : may, seesMoney: may !== 'look' })

/** Who is asking. Made in one place only (`viewerOf` in `db/viewer`), from the record and never from a request. */
export type Who =
	| {
			readonly is: 'staff'
			readonly person: PersonId
			readonly role: 'designer' | 'helper'
	  }
	| {
			readonly is: 'contact'
			readonly person: PersonId
			readonly clients: ReadonlyMap<ClientId, May>
	  }
	| { readonly is: 'token'; readonly of: 'calendar' | 'picture' }
	| { readonly is: 'nobody' }
	| { readonly is: 'system' }

export type Viewer = Brand<Who, 'Viewer'>

/** What someone is to a thing: the columns of the table. */
export const people = [
	'designer',
	'helper',
	'approver',
	'payer',
	'looker',
	'contact of another client',
	'token holder',
	'signed out',
	'system',
] as const
export type Person = (typeof people)[number]

const asContact: Readonly<Record<May, Person>> = { approve: 'approver', pay: 'payer', look: 'looker' }

/** What `who` is to a thing of `client`; null for a thing of the whole studio. */
export function personTo(who: Who, client: ClientId | null): Person {
	switch (who.is) {
		case 'staff':
			return who.role
		case 'contact': {
			const may = client === null ? undefined : who.clients.get(client)
			return may === undefined ? 'contact of another client' : asContact[may]
		}
		case 'token':
			return 'token holder'
		case 'nobody':
			return 'signed out'
		case 'system':
			return 'system'
		default:
			return who satisfies never
	}
}
