import { type Collection, type CollectionExtra, type Design, mostDesigns, mostExtras } from './collection'

type Keyed<T> = Omit<T, 'key'> & { readonly key: string | null }

/** One thing that the designer changes; a null key makes a new one. */
export type Change =
	| { readonly is: 'words'; readonly title: string; readonly letter: string }
	| { readonly is: 'design'; readonly design: Keyed<Design> }
	| { readonly is: 'extra'; readonly extra: Keyed<CollectionExtra> }
	| { readonly is: 'drop'; readonly of: 'designs' | 'extras'; readonly key: string }

export type Refusal = 'name taken' | 'too many' | 'not there'
export type Changed =
	| { readonly ok: true; readonly collection: Collection }
	| { readonly ok: false; readonly why: Refusal }

const no = (why: Refusal): Changed => ({ ok: false, why })
const sameName = (a: string, b: string): boolean => a !== '' && a.toLowerCase() === b.toLowerCase()

/** A short key that none of `taken` has. */
function freshKey(taken: readonly { readonly key: string }[]): string {
	const used = new Set(taken.map(({ key }) => key))
	const free = Array.from({ length: used.size + 1 }, (_, index) => `d${index + 1}`)
	return free.find((key) => !used.has(key)) ?? ''
}

type Named = { readonly key: string; readonly name: string }
type Put<T> = { readonly ok: true; readonly all: T[] } | { readonly ok: false; readonly why: Refusal }

/** `next` in the place of the one that has its key, or after all others under a key of its own. */
function put<T extends Named>(all: readonly T[], next: Keyed<T>, made: (key: string) => T, most: number): Put<T> {
	if (all.some(({ key, name }) => key !== next.key && sameName(name, next.name)))
		return { ok: false, why: 'name taken' }
	if (next.key === null) {
		if (all.length >= most) return { ok: false, why: 'too many' }
		return { ok: true, all: [...all, made(freshKey(all))] }
	}
	const { key } = next
	if (!all.some((each) => each.key === key)) return { ok: false, why: 'not there' }
	return { ok: true, all: all.map((each) => (each.key === key ? made(key) : each)) }
}

/** A collection with one thing changed, or why it cannot be. Names differ, whatever their case. */
export function changed(collection: Collection, change: Change): Changed {
	switch (change.is) {
		case 'words':
			return { ok: true, collection: { ...collection, title: change.title, letter: change.letter } }
		case 'design': {
			const { design } = change
			const next = put(collection.designs, design, (key) => ({ ...design, key }), mostDesigns)
			return next.ok ? { ok: true, collection: { ...collection, designs: next.all } } : next
		}
		case 'extra': {
			const { extra } = change
			const next = put(collection.extras, extra, (key) => ({ ...extra, key }), mostExtras)
			return next.ok ? { ok: true, collection: { ...collection, extras: next.all } } : next
		}
		case 'drop': {
			const { of, key } = change
			const isThere = collection[of].some((each) => each.key === key)
			if (!isThere) return no('not there')
			const without = <T extends Named>(all: readonly T[]) => all.filter((each) => each.key !== key)
			const next = of === 'designs' ? { designs: without(collection.designs) } : { extras: without(collection.extras) }
			return { ok: true, collection: { ...collection, ...next } }
		}
		default:
			return change satisfies never
	}
}
