import { z } from 'zod'
import { words } from '../../proposal/draft'
import { type Hash, hashOf } from '../../record/hash'

const pointSchema = z.strictObject({
	key: z.string().regex(/^[a-z][a-z-]{0,29}$/, 'is not a key'),
	title: words(80),
	says: words(1000),
})

/** What a client reads before agreeing to electronic records, and the two sentences that they agree to, each apart. */
export const consentSchema = z.strictObject({
	v: z.literal(1),
	version: z.int().min(1),
	points: z.array(pointSchema).min(1).max(20),
	/** Beside the box that is not ticked. */
	agrees: words(300),
	/** Beside the typed name. */
	intends: words(300),
})
export type Consent = z.infer<typeof consentSchema>

/** Whose records they are, and where one writes to about them. */
export type ConsentFacts = { readonly studio: string; readonly writeTo: string; readonly client: string }

/** The words as they are shown to one client: what was consented to is known by the hash of these. */
export function consentFor(consent: Consent, { studio, writeTo, client }: ConsentFacts): Consent {
	const filling = new Map([
		['studio', studio],
		['write to', writeTo],
		['client', client],
	])
	const filled = (text: string) => text.replace(/\{([a-z ]+)\}/g, (whole, name: string) => filling.get(name) ?? whole)
	return {
		...consent,
		points: consent.points.map(({ key, title, says }) => ({ key, title: filled(title), says: filled(says) })),
		agrees: filled(consent.agrees),
		intends: filled(consent.intends),
	}
}

export const consentHash = (shown: Consent): Hash => hashOf(shown)
