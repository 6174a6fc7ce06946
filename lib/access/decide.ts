import type { ClientId } from '../units/id'
import { type Act, table } from './table'
import { type Person, personTo, type Who } from './viewer'

export type Verdict = 'may' | 'forbidden' | 'hidden'

/** What the table says of `person` and `act`. */
export function verdict(person: Person, act: Act): Verdict {
	const row: { may: readonly Person[]; not?: readonly Person[] } = table[act]
	if (row.may.includes(person)) return 'may'
	return row.not?.includes(person) ? 'forbidden' : 'hidden'
}

/** `client` is the one that the thing belongs to, null for a thing of the whole studio. */
export function decide(who: Who, act: Act, client: ClientId | null): Verdict {
	return verdict(personTo(who, client), act)
}
