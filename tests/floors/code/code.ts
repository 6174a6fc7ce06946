import ts from 'typescript'
import type { Files } from './files'
import { type Import, importsOf } from './imports'
import { resolver, type Target } from './resolve'

export type Link = Import & { readonly to: Target }

export type Source = {
	readonly path: string
	readonly tree: ts.SourceFile
	readonly links: readonly Link[]
	/** 'use client' or 'use server', when the whole file is that. */
	readonly directive: string | undefined
}

export type Code = {
	readonly files: Files
	readonly sources: readonly Source[]
	readonly at: (path: string) => Source | undefined
}

const isCode = /\.m?[jt]sx?$/

export const isDirective = (
	node: ts.Node | undefined,
): node is ts.ExpressionStatement & { expression: ts.StringLiteral } =>
	node !== undefined &&
	ts.isExpressionStatement(node) &&
	ts.isStringLiteral(node.expression) &&
	node.expression.text.startsWith('use ')

/** Reads every file with the compiler's own parser and finds where its imports lead. */
export function codeOf(files: Files): Code {
	const resolve = resolver(files)
	const sources = [...files]
		.filter(([path]) => isCode.test(path))
		.map(([path, text]): Source => {
			const tree = ts.createSourceFile(path, text, ts.ScriptTarget.ES2023, true)
			const [first] = tree.statements
			const links = importsOf(tree).map((each): Link => ({ ...each, to: resolve(path, each.specifier) }))
			return { path, tree, links, directive: isDirective(first) ? first.expression.text : undefined }
		})
	const byPath = new Map(sources.map((source) => [source.path, source]))
	return { files, sources, at: (path) => byPath.get(path) }
}

/** Whether a path is the place named or lies under it. */
export const isIn = (path: string, place: string): boolean => path === place || path.startsWith(`${place}/`)

export function childrenOf(node: ts.Node): ts.Node[] {
	const children: ts.Node[] = []
	ts.forEachChild(node, (child) => {
		children.push(child)
	})
	return children
}

/** Every node of a file, from the top. */
export function* nodesOf(node: ts.Node): Generator<ts.Node> {
	yield node
	for (const child of childrenOf(node)) yield* nodesOf(child)
}
