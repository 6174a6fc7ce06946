import ts from 'typescript'
import { type Code, isIn, nodesOf, type Source } from '../code/code'
import { lineOf } from '../code/imports'
import type { Problem } from '../code/problem'

type Fault = { readonly is: string; readonly instead: string }

const styled: Fault = {
	is: 'sets a style attribute, which the policy forbids',
	instead: 'use a class, or a stylesheet response as for the tint',
}
const raw: Fault = { is: 'sets HTML as text', instead: 'let React write it' }

function styleFault(node: ts.Node): Fault | undefined {
	if (ts.isJsxAttribute(node) && node.name.getText() === 'style') return styled
	if (ts.isIdentifier(node) || ts.isStringLiteralLike(node)) {
		if (node.text === 'dangerouslySetInnerHTML') return raw
		if (!ts.isIdentifier(node) && /<[^>]*\sstyle\s*=/.test(node.text)) return styled
	}
	const isPiece = ts.isTemplateHead(node) || ts.isTemplateMiddle(node) || ts.isTemplateTail(node)
	return isPiece && /\sstyle\s*=\s*["']/.test(node.text) ? styled : undefined
}

const waiting: Fault = {
	is: 'uses Suspense, above which an access check can answer only 200',
	instead: 'await what the page needs before it shows anything',
}

const suspenseFault = (node: ts.Node): Fault | undefined =>
	ts.isIdentifier(node) && node.text === 'Suspense' && !ts.isJsxClosingElement(node.parent) ? waiting : undefined

const faults = (sources: readonly Source[], faultAt: (node: ts.Node) => Fault | undefined): Problem[] =>
	sources.flatMap(({ path, tree }) =>
		[...nodesOf(tree)].flatMap((node) => {
			const fault = faultAt(node)
			return fault === undefined ? [] : { file: path, line: lineOf(tree, node), ...fault }
		}),
	)

const inApp = ({ sources }: Code): Source[] => sources.filter(({ path }) => isIn(path, 'app'))

/** Style attributes and raw HTML, which mail alone may have. */
export const inlineStyles = (code: Code): Problem[] =>
	faults(
		inApp(code).filter(({ path }) => !isIn(path, 'app/documents')),
		styleFault,
	)

/** What shows a page before it is known whether it may be shown. */
export const earlyPages = (code: Code): Problem[] => [
	...inApp(code)
		.filter(({ path }) => /\/loading\.[jt]sx?$/.test(path))
		.map(({ path }) => ({
			file: path,
			line: 1,
			is: 'shows a page before its access check, so that a 404 becomes a 200',
			instead: 'take the file away and await in the page',
		})),
	...faults(inApp(code), suspenseFault),
]
