import { readdirSync, readFileSync } from 'node:fs'
import { join, relative } from 'node:path'
import ts from 'typescript'

const root = join(import.meta.dirname, '..', '..', '..')

const isExported = (node: ts.Statement): boolean =>
	ts.canHaveModifiers(node) && (ts.getModifiers(node) ?? []).some(({ kind }) => kind === ts.SyntaxKind.ExportKeyword)

const takesViewer = ({ parameters: [first] }: ts.SignatureDeclaration): boolean => first?.type?.getText() === 'Viewer'

function namesIn(node: ts.Statement): string[] {
	if (!isExported(node)) return []
	if (ts.isFunctionDeclaration(node)) return takesViewer(node) && node.name !== undefined ? [node.name.text] : []
	if (!ts.isVariableStatement(node)) return []
	return node.declarationList.declarations.flatMap(({ name, initializer }) =>
		initializer !== undefined && ts.isArrowFunction(initializer) && takesViewer(initializer) ? [name.getText()] : [],
	)
}

/** What a file exports that takes a viewer first. */
export const takers = (text: string): string[] =>
	ts.createSourceFile('a.ts', text, ts.ScriptTarget.Latest, true).statements.flatMap(namesIn)

/** "proposals/publish publish" for each in `db/`. That nothing else is exported there is held by `tests/floors`. */
export const exported = (): string[] =>
	readdirSync(join(root, 'db'), { recursive: true, encoding: 'utf8' })
		.filter((path) => path.endsWith('.ts'))
		.flatMap((path) =>
			takers(readFileSync(join(root, 'db', path), 'utf8')).map(
				(name) => `${relative('.', path).replace(/\.ts$/, '')} ${name}`,
			),
		)
		.toSorted()
