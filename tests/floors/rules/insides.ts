import ts from 'typescript'
import { type Code, isIn, nodesOf, type Source } from '../code/code'
import { lineOf } from '../code/imports'
import type { Problem } from '../code/problem'

/** What only `db/` may hold, with those who may all the same. */
export type Inside = {
	readonly place: string
	readonly because: string
	readonly except: readonly { readonly file: string; readonly because: string }[]
}

/** Where a connection hangs, for whoever reaches past the functions. */
const hooks = new Set(['doorsillDatabase', 'doorsillSideFile'])
const instead = 'call a function of `db/` that takes the viewer and does the whole act'

function* inFile({ path, tree, links }: Source, insides: readonly Inside[]): Generator<Problem> {
	for (const { kind, to, line } of links) {
		if (kind === 'type' || to.is !== 'ours') continue
		const inside = insides.find(({ place }) => isIn(to.path, place))
		if (inside === undefined || inside.except.some(({ file }) => file === path)) continue
		yield { file: path, line, is: `imports ${to.path}, an inside of the record`, instead }
	}
	for (const node of nodesOf(tree))
		if ((ts.isIdentifier(node) || ts.isStringLiteralLike(node)) && hooks.has(node.text))
			yield { file: path, line: lineOf(tree, node), is: `reaches for ${node.text}`, instead }
}

const mayLookInside = (path: string): boolean => ['db', 'demo', 'tests'].some((place) => isIn(path, place))

/** Whoever outside `db/` reads or writes past its functions. The cast and the tests may. */
export const reachedInsides = ({ sources }: Code, insides: readonly Inside[]): Problem[] =>
	sources.filter(({ path }) => !mayLookInside(path)).flatMap((source) => [...inFile(source, insides)])
