import type { Key } from '../story'
import type { Papered } from './papers'

export type Shown = { readonly name: string; readonly as: Key; readonly at: (cast: Papered) => string }

export const shown =
	(as: Key) =>
	(name: string, at: (cast: Papered) => string): Shown => ({ name, as, at })
