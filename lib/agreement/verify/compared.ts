import type { Hash } from '../../record/is-hash'
import type { Moment } from '../../units/day'
import { pastedHash } from './pasted-hash'

/** A file that the studio sealed, as its record knows it. */
export type KnownPaper = {
	readonly hash: Hash
	/** "Agreement with Marrowby Bakery, 1 December 2026 to 30 November 2027" */
	readonly name: string
	readonly sealedAt: Moment
	/** True when another one took its place, or the agreement was ended. */
	readonly isPast: boolean
}

export type Compared =
	| { readonly is: 'no hash' }
	| { readonly is: 'unknown'; readonly hash: Hash }
	| { readonly is: 'known'; readonly hash: Hash; readonly paper: KnownPaper }

/** What was pasted, against the files that the one who asks may know of. */
export function compared(pasted: string, known: readonly KnownPaper[]): Compared {
	const hash = pastedHash(pasted)
	if (hash === null) return { is: 'no hash' }
	const paper = known.find((each) => each.hash === hash)
	return paper === undefined ? { is: 'unknown', hash } : { is: 'known', hash, paper }
}
