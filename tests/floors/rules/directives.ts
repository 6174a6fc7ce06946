import { type Code, isDirective, isIn, nodesOf } from '../code/code'
import { lineOf } from '../code/imports'
import type { Problem } from '../code/problem'

const home = 'app/(studio)'

/** Server actions outside the studio's own files of actions. */
export const strayActions = ({ sources }: Code): Problem[] =>
	sources.flatMap(({ path, tree }) =>
		[...nodesOf(tree)].flatMap((node) => {
			if (!isDirective(node) || node.expression.text !== 'use server') return []
			const here = { file: path, line: lineOf(tree, node) }
			if (node !== tree.statements[0])
				return {
					...here,
					is: 'makes a server action inside a component',
					instead: 'give it a file of actions of its own',
				}
			if (isIn(path, home)) return []
			return {
				...here,
				is: 'is a server action outside the studio',
				instead: 'make it a route handler (POST, redirect, GET)',
			}
		}),
	)
