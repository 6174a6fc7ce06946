/** The way to a value in a draft. */
export type Path = readonly (string | number)[]

/** Every value in a draft that is no list and no object, with the way to it; of a list, what is first in it. */
export function leavesOf(value: unknown, path: Path = []): { path: Path; value: unknown }[] {
	if (Array.isArray(value)) return value.length === 0 ? [] : leavesOf(value[0], [...path, 0])
	if (typeof value === 'object' && value !== null)
		return Object.entries(value).flatMap(([key, inner]) => leavesOf(inner, [...path, key]))
	return [{ path, value }]
}

/** Every list and object in a draft, itself too. */
export function nodesOf(value: unknown, path: Path = []): { path: Path; value: object }[] {
	if (typeof value !== 'object' || value === null) return []
	const inner: [string | number, unknown][] = Array.isArray(value) ? [[0, value[0]]] : Object.entries(value)
	return [{ path, value }, ...inner.flatMap(([key, each]) => nodesOf(each, [...path, key]))]
}

/** A copy with something else at the end of a path. */
export function replaced(value: unknown, [key, ...rest]: Path, by: unknown): unknown {
	if (key === undefined) return by
	if (Array.isArray(value)) return value.map((each, index) => (index === key ? replaced(each, rest, by) : each))
	if (typeof value !== 'object' || value === null) throw new Error(`replaced: nothing at ${key}`)
	return Object.fromEntries(
		Object.entries(value).map(([name, each]) => [name, name === key ? replaced(each, rest, by) : each]),
	)
}

/** The name of what stands there. */
export const nameOf = (path: Path) => String(path.findLast((step) => typeof step === 'string'))
