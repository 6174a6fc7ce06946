import ts from 'typescript'
import { type Code, isIn, type Link, nodesOf, type Source } from '../code/code'
import { lineOf } from '../code/imports'
import type { Problem } from '../code/problem'
import { packageOf } from '../code/resolve'

/** A library that `lib` may rest on. */
export type Carried = { readonly name: string; readonly because: string }

const world: { readonly [name: string]: string } = {
	process: 'hand in what it tells',
	globalThis: 'hand the state in and give the new one back',
	global: 'hand the state in and give the new one back',
	self: 'hand the state in and give the new one back',
	fetch: 'hand in what was fetched',
	XMLHttpRequest: 'hand in what was fetched',
	WebSocket: 'hand in what was said',
	EventSource: 'hand in what was said',
	localStorage: 'hand in what was kept',
	sessionStorage: 'hand in what was kept',
	indexedDB: 'hand in what was kept',
	setTimeout: 'let the caller wait',
	setInterval: 'let the caller wait',
	setImmediate: 'let the caller wait',
	queueMicrotask: 'let the caller wait',
	performance: 'hand the time in',
	crypto: 'hand the random bytes in; for a hash, `createHash` of node:crypto',
	Buffer: 'use Uint8Array, which a browser has too',
	require: 'import it',
	eval: 'write it out',
}

/** Of the machine's own time zone or language: they differ from one machine to the next. */
const ofTheMachine =
	/^(get(FullYear|Month|Date|Day|Hours|Minutes|Seconds|TimezoneOffset)|to(Locale|Locale(Date|Time)|Date|Time)String)$/

/** Not a property's name nor a type's. */
function standsAlone(node: ts.Identifier): boolean {
	const { parent } = node
	if (ts.isPropertyAccessExpression(parent)) return parent.expression === node
	if (ts.isPropertyAssignment(parent)) return parent.initializer === node
	if (ts.isBindingElement(parent)) return parent.propertyName !== node
	return !(
		ts.isQualifiedName(parent) ||
		ts.isTypeReferenceNode(parent) ||
		ts.isTypeElement(parent) ||
		ts.isMethodDeclaration(parent)
	)
}

function dateTrouble({ parent }: ts.Identifier): string | undefined {
	const how = 'hand the moment in'
	if (ts.isPropertyAccessExpression(parent)) return ['UTC', 'parse'].includes(parent.name.text) ? undefined : how
	if (ts.isBinaryExpression(parent))
		return parent.operatorToken.kind === ts.SyntaxKind.InstanceOfKeyword ? undefined : how
	if (!ts.isNewExpression(parent)) return how
	const [first, second] = parent.arguments ?? []
	if (first === undefined || ts.isSpreadElement(first)) return how
	return second === undefined ? undefined : 'use Date.UTC: the parts are taken in the time zone of the machine'
}

const mathTrouble = ({ parent }: ts.Identifier): string | undefined =>
	ts.isPropertyAccessExpression(parent) && parent.name.text !== 'random' ? undefined : 'hand the random number in'

function troubleWithName(node: ts.Identifier): string | undefined {
	if (!standsAlone(node)) return undefined
	if (node.text === 'Date') return dateTrouble(node)
	if (node.text === 'Math') return mathTrouble(node)
	return Object.hasOwn(world, node.text) ? world[node.text] : undefined
}

function troubleWithCall(node: ts.CallExpression): string | undefined {
	if (!ts.isPropertyAccessExpression(node.expression)) return undefined
	const { text } = node.expression.name
	if (/^format(ToParts)?$/.test(text) && node.arguments.length === 0) return 'hand in the moment to be formatted'
	return ofTheMachine.test(text) ? 'use the UTC form, or a formatter with its zone and language handed in' : undefined
}

function troubleAt(node: ts.Node): string | undefined {
	if (ts.isIdentifier(node)) return troubleWithName(node)
	return ts.isCallExpression(node) ? troubleWithCall(node) : undefined
}

function troubleWithLink({ to, names }: Link, carried: readonly Carried[]): string | undefined {
	if (to.is === 'node') {
		const isHash = to.name === 'node:crypto' && names.length === 1 && names[0]?.name === 'createHash'
		return isHash ? undefined : 'hand in what it gives; of Node only `createHash` of node:crypto'
	}
	if (to.is !== 'package' || carried.some(({ name }) => name === packageOf(to.name))) return undefined
	return 'keep the library on a higher floor, or, if it is pure, list it here with a reason'
}

function* inFile({ path, tree, links }: Source, carried: readonly Carried[]): Generator<Problem> {
	for (const link of links) {
		const instead = troubleWithLink(link, carried)
		if (instead !== undefined) yield { file: path, line: link.line, is: `imports ${link.specifier}`, instead }
	}
	for (const node of nodesOf(tree)) {
		const instead = troubleAt(node)
		if (instead === undefined) continue
		const around = ts.isIdentifier(node) ? node.parent : node
		const is = `reaches outside: ${around.getText(tree).split('\n')[0]}`
		yield { file: path, line: lineOf(tree, node), is, instead }
	}
}

/** What in `lib` takes anything that was not handed in. */
export const impure = ({ sources }: Code, carried: readonly Carried[]): Problem[] =>
	sources.filter(({ path }) => isIn(path, 'lib')).flatMap((source) => [...inFile(source, carried)])
