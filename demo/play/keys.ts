/** The keys of a table of the cast, in the order in which it is written. */
export const keysOf = <T extends object>(table: T): (keyof T & string)[] =>
	Object.keys(table).filter((key): key is keyof T & string => key in table)

/** The table's entries, each key still known by name. */
export const entriesOf = <T extends object>(table: T): (readonly [keyof T & string, T[keyof T & string]])[] =>
	keysOf(table).map((key) => [key, table[key]] as const)

const isWhole = <K extends string, V>(keys: readonly K[], made: Partial<Record<K, V>>): made is Record<K, V> =>
	keys.every((key) => Object.hasOwn(made, key))

/** One value a key. */
export function tableOf<K extends string, V>(keys: readonly K[], make: (key: K) => V): Record<K, V> {
	const made: Partial<Record<K, V>> = {}
	for (const key of keys) Object.assign(made, { [key]: make(key) })
	if (!isWhole(keys, made)) throw new Error('tableOf: a key got no value')
	return made
}

/** What has been made so far, by its name in the cast. */
export type Shelf<K extends string, V> = { readonly put: (key: K, value: V) => void; readonly of: (key: K) => V }

/** @throws when something is asked for that is not made yet: the play is out of order */
export function shelf<K extends string, V>(what: string): Shelf<K, V> {
	const made = new Map<K, V>()
	return {
		put: (key, value) => made.set(key, value),
		of: (key) => {
			const found = made.get(key)
			if (found === undefined) throw new Error(`The ${what} “${key}” is not made yet.`)
			return found
		},
	}
}
