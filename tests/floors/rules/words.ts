import ts from 'typescript'
import { type Code, isIn, nodesOf, type Source } from '../code/code'
import { lineOf } from '../code/imports'
import type { Problem } from '../code/problem'

/** How many assertions a file may hold: those with which a checked value gets its brand. */
export type Brander = { readonly file: string; readonly count: number; readonly because: string }

const isConst = (type: ts.TypeNode): boolean => type.getText() === 'const'

const assertionsIn = ({ tree }: Source): ts.Node[] =>
	[...nodesOf(tree)].filter(
		(node) => (ts.isAsExpression(node) || ts.isTypeAssertionExpression(node)) && !isConst(node.type),
	)

/** Assertions beyond those listed; and lists that allow more than there are. */
export function assertions({ sources }: Code, branders: readonly Brander[]): Problem[] {
	return sources.flatMap((source) => {
		const { path, tree } = source
		const found = assertionsIn(source)
		const allowed = branders.find(({ file }) => file === path)?.count ?? 0
		const instead = 'parse it, narrow it, or put the assertion into the constructor of a branded type and list it'
		const more = found
			.slice(allowed)
			.map((node) => ({ file: path, line: lineOf(tree, node), is: `asserts ${node.getText(tree)}`, instead }))
		const fewer = { file: path, line: 1, is: `is listed with ${allowed} assertions and has ${found.length}` }
		return found.length < allowed ? [{ ...fewer, instead: 'lower the number' }] : more
	})
}

export const anys = ({ sources }: Code): Problem[] =>
	sources.flatMap(({ path, tree }) =>
		[...nodesOf(tree)]
			.filter(({ kind }) => kind === ts.SyntaxKind.AnyKeyword)
			.map((node) => ({
				file: path,
				line: lineOf(tree, node),
				is: 'says any',
				instead: 'say what it is, or unknown and parse it',
			})),
	)

const silencers =
	/(eslint|biome|oxlint|tslint)-(disable|ignore|enable)\S*|prettier-ignore|@ts-(ignore|nocheck|expect-error)|(istanbul|c8|v8) ignore/

/** Of the leaves alone: a comment stands before a token or after one. */
function* commentsIn(tree: ts.SourceFile, node: ts.Node = tree): Generator<ts.CommentRange> {
	const children = node.getChildren(tree)
	if (children.length === 0 && node.kind !== ts.SyntaxKind.JsxText) {
		yield* ts.getLeadingCommentRanges(tree.text, node.pos) ?? []
		yield* ts.getTrailingCommentRanges(tree.text, node.pos) ?? []
	}
	for (const child of children) yield* commentsIn(tree, child)
}

const silencer = (path: string, text: string): string | undefined => {
	const [found] = silencers.exec(text) ?? []
	return isIn(path, 'tests') && found === '@ts-expect-error' ? undefined : found
}

const silenced = (file: string, line: number, found: string): Problem => ({
	file,
	line,
	is: `silences a check: ${found}`,
	instead: 'mend what the check found',
})

function inSource({ path, tree }: Source): Problem[] {
	const lines = [...commentsIn(tree)].flatMap(({ pos, end }) => {
		const found = silencer(path, tree.text.slice(pos, end))
		return found === undefined ? [] : silenced(path, tree.getLineAndCharacterOfPosition(pos).line + 1, found)
	})
	return [...new Map(lines.map((each) => [each.line, each])).values()].toSorted((a, b) => a.line - b.line)
}

const inSheet = (path: string, text: string): Problem[] =>
	text.split('\n').flatMap((line, index) => {
		const found = silencer(path, line)
		return found === undefined ? [] : silenced(path, index + 1, found)
	})

/** Comments that turn a check off. Tests may expect a type error: that is how they show that one is there. */
export const silences = ({ files, sources }: Code): Problem[] => [
	...sources.flatMap(inSource),
	...[...files].filter(([path]) => path.endsWith('.css')).flatMap(([path, text]) => inSheet(path, text)),
]
