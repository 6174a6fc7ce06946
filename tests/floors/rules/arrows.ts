import { type Code, isIn, type Link, type Source } from '../code/code'
import type { Problem } from '../code/problem'

export type Floor =
	| 'lib'
	| 'lib/pricing'
	| 'db'
	| 'app/ui'
	| 'app/server'
	| 'app/documents'
	| 'page'
	| 'part of a page'
	| 'action'
	| 'edge'
	| 'demo'
	| 'tests'
	| 'e2e'
	| 'settings'

export type Arrow = {
	readonly from: Floor
	readonly to: readonly Floor[]
	readonly because: string
	readonly instead: string
}
/** A part of a page that may know the shape of what a read gives it, and no more. */
export type Shape = { readonly from: string; readonly to: string; readonly because: string }

const folders = ['lib/pricing', 'lib', 'db', 'app/ui', 'app/server', 'app/documents', 'demo', 'tests', 'e2e'] as const
const page =
	/\/(page|layout|template|default|error|global-error|not-found|forbidden|unauthorized|loading|route|icon|sitemap|robots|manifest)\.tsx?$/

export function floorOf(path: string, directive: string | undefined): Floor {
	const folder = folders.find((each) => isIn(path, each))
	if (folder !== undefined) return folder
	if (path === 'proxy.ts' || path === 'instrumentation.ts') return 'edge'
	if (!isIn(path, 'app')) return 'settings'
	if (directive === 'use server') return 'action'
	return page.test(path) ? 'page' : 'part of a page'
}

const usesShape = (from: string, { kind, to }: Link, row: Shape): boolean =>
	kind === 'type' && to.is === 'ours' && row.from === from && row.to === to.path

function problemOf(
	code: Code,
	{ path, directive }: Source,
	link: Link,
	arrows: readonly Arrow[],
	shapes: readonly Shape[],
): Problem | undefined {
	const { specifier, line, kind, to } = link
	const here = { file: path, line }
	if (specifier === null)
		return {
			...here,
			is: 'imports a path that is put together at run time',
			instead: 'write the path out, so that it can be checked',
		}
	if (to.is === 'unknown')
		return { ...here, is: `imports ${specifier}, where nothing lies`, instead: 'name the file that is meant' }
	if (to.is !== 'ours') return undefined
	const from = floorOf(path, directive)
	const goal = floorOf(to.path, code.at(to.path)?.directive)
	const arrow = arrows.find((row) => row.from === from)
	if (arrow === undefined || arrow.to.includes(goal)) return undefined
	if (from === 'part of a page' && goal === 'db' && shapes.some((row) => usesShape(path, link, row))) return undefined
	const what = kind === 'type' ? 'the types of ' : ''
	return { ...here, is: `(${from}) imports ${what}${to.path} (${goal})`, instead: arrow.instead }
}

/** Imports that go up a floor, or aside where that is not allowed. A floor without a row may import anything. */
export const wrongArrows = (code: Code, arrows: readonly Arrow[], shapes: readonly Shape[]): Problem[] =>
	code.sources.flatMap((source) => source.links.flatMap((link) => problemOf(code, source, link, arrows, shapes) ?? []))

/** Rows for which there is no import any more. */
export const idleShapes = (code: Code, shapes: readonly Shape[]): Problem[] =>
	shapes
		.filter((row) => !code.at(row.from)?.links.some(({ to }) => to.is === 'ours' && to.path === row.to))
		.map(({ from, to }) => ({
			file: from,
			line: 1,
			is: `is listed as taking the types of ${to}, and does not import it`,
			instead: 'take the row away',
		}))
