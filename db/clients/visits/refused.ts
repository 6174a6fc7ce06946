import type { VisitRefusal } from '@/lib/visit/decide'
import type { Denied } from '../../viewer'

/** Beside what a visit itself refuses: a design that nobody approved cannot have gone in. */
export type WriteRefusal = VisitRefusal | 'not approved'
export type Refusal = { readonly ok: false; readonly why: WriteRefusal } | Denied

/** A refusal in the midst of a transaction, which is undone with it. */
export class Refused extends Error {
	constructor(readonly said: Refusal) {
		super(said.why)
	}
}

/** A refusal as what was said. */
export function orRefused<T>(run: () => T): T | Refusal {
	try {
		return run()
	} catch (error) {
		if (error instanceof Refused) return error.said
		throw error
	}
}
