import ts from 'typescript'
import { type Code, childrenOf, isIn, type Source } from '../code/code'
import { lineOf } from '../code/imports'
import type { Problem } from '../code/problem'

export type Without = { readonly file: string; readonly names: readonly string[]; readonly because: string }

type Exported = { readonly name: string; readonly node: ts.Node; readonly ill: string }

/** Who may come first, and the one file that makes it. */
const firsts: { readonly [name: string]: string } = {
	Viewer: 'lib/access/viewer.ts',
	Tx: 'db/open.ts',
	Reading: 'db/open.ts',
	Db: 'db/open.ts',
}

/** What these make is no function: a table, a parser of text. */
const makers = new Set(['sqliteTable', 'z'])

/** Gathers the tables, each of which is looked at in its own file. */
const index = 'db/schema/index.ts'

const isExported = (node: ts.Statement): boolean =>
	ts.canHaveModifiers(node) && (ts.getModifiers(node) ?? []).some(({ kind }) => kind === ts.SyntaxKind.ExportKeyword)

function takesViewer({ links }: Source, { parameters }: ts.SignatureDeclaration): boolean {
	const type = parameters[0]?.type
	if (type === undefined || !ts.isTypeReferenceNode(type) || !ts.isIdentifier(type.typeName)) return false
	const { text } = type.typeName
	return links.some(
		({ to, names }) =>
			to.is === 'ours' &&
			names.some(({ name, as }) => as === text && Object.hasOwn(firsts, name) && firsts[name] === to.path),
	)
}

const noViewer = 'does not take the viewer first'
const untold = 'cannot be told to take the viewer first'

function rootOf(node: ts.Expression): string {
	if (ts.isCallExpression(node) || ts.isPropertyAccessExpression(node)) return rootOf(node.expression)
	return ts.isIdentifier(node) ? node.text : ''
}

/** What gives a number or a text, never a function. */
const reckons = new Set<ts.SyntaxKind>([
	ts.SyntaxKind.PlusToken,
	ts.SyntaxKind.MinusToken,
	ts.SyntaxKind.AsteriskToken,
	ts.SyntaxKind.AsteriskAsteriskToken,
	ts.SyntaxKind.SlashToken,
	ts.SyntaxKind.PercentToken,
])

function isPlain(node: ts.Node): boolean {
	if (ts.isBinaryExpression(node)) return reckons.has(node.operatorToken.kind)
	if (ts.isCallExpression(node)) return makers.has(rootOf(node))
	return ts.isTypeNode(node) || ts.isTemplateExpression(node) || ts.isPrefixUnaryExpression(node)
}

const isFunction = (node: ts.Node) =>
	ts.isArrowFunction(node) || ts.isFunctionExpression(node) || ts.isMethodDeclaration(node)

/** Behind a name, a call or a class there could be a function. */
const isVeiled = (node: ts.Node): boolean =>
	ts.isIdentifier(node) ||
	ts.isPropertyAccessExpression(node) ||
	ts.isCallExpression(node) ||
	ts.isNewExpression(node) ||
	ts.isClassExpression(node) ||
	ts.isShorthandPropertyAssignment(node) ||
	ts.isSpreadAssignment(node) ||
	ts.isAccessor(node)

/** The functions that a value is or holds, as far as the text shows. */
function* functionsIn(source: Source, name: string, node: ts.Node): Generator<Exported> {
	if (isPlain(node)) return
	if (isFunction(node)) {
		if (!takesViewer(source, node)) yield { name, node, ill: noViewer }
	} else if (isVeiled(node)) yield { name, node, ill: untold }
	else if (ts.isPropertyAssignment(node)) yield* functionsIn(source, `${name}.${node.name.getText()}`, node.initializer)
	else for (const child of childrenOf(node)) yield* functionsIn(source, name, child)
}

const nameOf = ({ name }: ts.FunctionDeclaration | ts.ClassDeclaration): string => name?.text ?? 'default'

function* inExported(source: Source, node: ts.Statement): Generator<Exported> {
	if (ts.isFunctionDeclaration(node) && !takesViewer(source, node)) yield { name: nameOf(node), node, ill: noViewer }
	if (ts.isClassDeclaration(node)) yield { name: nameOf(node), node, ill: untold }
	if (!ts.isVariableStatement(node)) return
	for (const { name, initializer } of node.declarationList.declarations)
		if (initializer === undefined) yield { name: name.getText(), node, ill: untold }
		else yield* functionsIn(source, name.getText(), initializer)
}

function* inStatement(source: Source, node: ts.Statement): Generator<Exported> {
	if (ts.isExportAssignment(node)) yield* functionsIn(source, 'default', node.expression)
	else if (isExported(node)) yield* inExported(source, node)
	else if (ts.isExportDeclaration(node) && !node.isTypeOnly && source.path !== index)
		yield { name: node.getText(), node, ill: untold }
}

const inFile = (source: Source): (Exported & { file: string; line: number })[] =>
	source.tree.statements
		.flatMap((node) => [...inStatement(source, node)])
		.map((each) => ({ ...each, file: source.path, line: lineOf(source.tree, each.node) }))

const withoutViewer = ({ sources }: Code) => sources.filter(({ path }) => isIn(path, 'db')).flatMap(inFile)

const isListed = (rows: readonly Without[], at: string, what: string): boolean =>
	rows.some(({ file, names }) => file === at && names.includes(what))

/** What `db/` exports without a viewer, or the inside of a transaction, in its first place. */
export const viewerless = (code: Code, rows: readonly Without[]): Problem[] =>
	withoutViewer(code)
		.filter(({ file, name }) => !isListed(rows, file, name))
		.map(({ file, line, name, ill }) => ({
			file,
			line,
			is: `exports ${name}, which ${ill}`,
			instead:
				'take a Viewer first (inside `db/` a Tx or a Reading), stop exporting it, or move what is pure to `lib/`',
		}))

/** Names that are listed without need. */
export function idleExceptions(code: Code, rows: readonly Without[]): Problem[] {
	const real = withoutViewer(code)
	return rows.flatMap(({ file, names }) =>
		names
			.filter((name) => !real.some((each) => each.file === file && each.name === name))
			.map((name) => ({
				file,
				line: 1,
				is: `is listed with ${name}, which needs no exception`,
				instead: 'take the name away',
			})),
	)
}
