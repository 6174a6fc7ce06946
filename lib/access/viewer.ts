import type { Brand } from '../units/brand'
import type { ClientId, PersonId } from '../units/id'

export type May = 'approve' | 'look'

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
	'looker',
	'contact of another client',
	'token holder',
	'signed out',
	'system',
] as const
export type Person = (typeof people)[number]

/** What `who` is to a thing of `client`; null for a thing of the whole studio. */
export function personTo(who: Who, client: ClientId | null): Person {
	switch (who.is) {
		case 'staff':
			return who.role
		case 'contact': {
			const may = client === null ? undefined : who.clients.get(client)
			return may === undefined ? 'contact of another client' : may === 'approve' ? 'approver' : 'looker'
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
