import { type Code, isIn } from '../code/code'
import type { Problem } from '../code/problem'

/** Libraries that only one place knows. Tests may look at anything. */
export type Keeping = {
	/** A package, with all that lies under it, or one entry of it. */
	readonly names: readonly string[]
	readonly in: readonly string[]
	readonly because: string
	readonly instead: string
}

function broken(path: string, specifier: string | null, keepings: readonly Keeping[]): Keeping | undefined {
	if (specifier === null) return undefined
	return keepings.find(
		({ names, in: places }) =>
			names.some((name) => isIn(specifier, name)) && !places.some((place) => isIn(path, place)),
	)
}

/** Imports, of types too, of a library outside the places that may know it. */
export const strayPackages = ({ sources }: Code, keepings: readonly Keeping[]): Problem[] =>
	sources
		.filter(({ path }) => !isIn(path, 'tests'))
		.flatMap(({ path, links }) =>
			links.flatMap(({ specifier, line }) => {
				const row = broken(path, specifier, keepings)
				return row === undefined ? [] : { file: path, line, is: `imports ${specifier}`, instead: row.instead }
			}),
		)
