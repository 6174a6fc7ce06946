import { canonical } from '@/lib/record/canonical'
import type { Entry } from '@/lib/record/chain'

export type Told = Pick<Entry, 'at' | 'actor' | 'object' | 'facts' | 'sealed'> & { readonly act: string }
/** What a line has to say of a piece of evidence, and what that is. */
export type Telling = readonly [says: string, what: string]

export const says = ({ act, at, actor, object, facts, sealed }: Told): string =>
	canonical({ act, at, actor, object, facts, sealed })
