import { type Hash, isHash } from '../../record/is-hash'

/** In groups of eight, for an eye to compare. */
export const grouped = (hash: Hash): string => hash.match(/.{8}/g)?.join(' ') ?? hash

/** A hash as it may be pasted: in groups, over several lines, in capitals. Null when it is none. */
export function pastedHash(text: string): Hash | null {
	const bare = text.replaceAll(/\s/g, '').toLowerCase()
	return isHash(bare) ? bare : null
}
