import canonicalize from 'canonicalize'

/** What canonical JSON can hold: no dates, no undefined, no functions. */
export type Json = string | number | boolean | null | readonly Json[] | { readonly [key: string]: Json }

/**
 * The one text of `value`, by the JSON Canonicalization Scheme (RFC 8785).
 * @throws when a number is not finite
 */
export function canonical(value: Json): string {
	const text = canonicalize(value)
	if (text === undefined) throw new Error('canonical: the value has no JSON text')
	return text
}
