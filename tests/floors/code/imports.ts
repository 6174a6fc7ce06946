import ts from 'typescript'

export type Named = { readonly name: string; readonly as: string; readonly isType: boolean }

/** One way in which a file names another. */
export type Import = {
	/** As it was written; null when it is put together at run time. */
	readonly specifier: string | null
	readonly line: number
	/** A type is gone before the file runs. `import { type A }` is not: with `verbatimModuleSyntax` it loads the module. */
	readonly kind: 'value' | 'type'
	/** What is taken; `*` for all of it. */
	readonly names: readonly Named[]
}

export const lineOf = (tree: ts.SourceFile, node: ts.Node): number =>
	tree.getLineAndCharacterOfPosition(node.getStart(tree)).line + 1

const everything = (as: string): Named => ({ name: '*', as, isType: false })

const listed = (specifiers: readonly (ts.ImportSpecifier | ts.ExportSpecifier)[]): Named[] =>
	specifiers.map(({ propertyName, name, isTypeOnly }) => ({
		name: (propertyName ?? name).text,
		as: name.text,
		isType: isTypeOnly,
	}))

function namesOfImport(clause: ts.ImportClause | undefined): Named[] {
	const first = clause?.name ? [{ name: 'default', as: clause.name.text, isType: false }] : []
	const rest = clause?.namedBindings
	if (rest === undefined) return first
	return [...first, ...(ts.isNamespaceImport(rest) ? [everything(rest.name.text)] : listed(rest.elements))]
}

const namesOfExport = (clause: ts.NamedExportBindings | undefined): Named[] =>
	clause !== undefined && ts.isNamedExports(clause) ? listed(clause.elements) : [everything('*')]

const asks = new Set(['require', 'require.resolve', 'module.require', 'import.meta.resolve'])

const isAsked = (node: ts.CallExpression, tree: ts.SourceFile): boolean =>
	node.expression.kind === ts.SyntaxKind.ImportKeyword || asks.has(node.expression.getText(tree))

type Found = Omit<Import, 'line' | 'specifier'> & { readonly from: ts.Node | undefined }

function found(node: ts.Node, tree: ts.SourceFile): Found | undefined {
	if (ts.isImportDeclaration(node)) {
		const kind = node.importClause?.isTypeOnly ? 'type' : 'value'
		return { from: node.moduleSpecifier, kind, names: namesOfImport(node.importClause) }
	}
	if (ts.isExportDeclaration(node) && node.moduleSpecifier !== undefined)
		return {
			from: node.moduleSpecifier,
			kind: node.isTypeOnly ? 'type' : 'value',
			names: namesOfExport(node.exportClause),
		}
	if (ts.isImportEqualsDeclaration(node) && ts.isExternalModuleReference(node.moduleReference)) {
		const kind = node.isTypeOnly ? 'type' : 'value'
		return { from: node.moduleReference.expression, kind, names: [everything(node.name.text)] }
	}
	if (ts.isImportTypeNode(node) && ts.isLiteralTypeNode(node.argument))
		return { from: node.argument.literal, kind: 'type', names: [everything('*')] }
	if (ts.isCallExpression(node) && isAsked(node, tree))
		return { from: node.arguments[0], kind: 'value', names: [everything('*')] }
	return undefined
}

/** Every import of a file: `import`, `import type`, `export … from`, `import()`, `require()`, and `import('…')` among types. */
export function importsOf(tree: ts.SourceFile): Import[] {
	const all: Import[] = []
	const visit = (node: ts.Node): void => {
		const each = found(node, tree)
		if (each !== undefined) {
			const { from, kind, names } = each
			const specifier = from !== undefined && ts.isStringLiteralLike(from) ? from.text : null
			all.push({ specifier, line: lineOf(tree, node), kind, names })
		}
		ts.forEachChild(node, visit)
	}
	visit(tree)
	return all
}
