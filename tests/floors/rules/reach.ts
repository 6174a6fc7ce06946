import { type Code, isIn } from '../code/code'
import type { Problem } from '../code/problem'

/** What a browser must never get hold of, not even as a type: what has a name there gets a use there. */
const keptBack = ['lib/pricing', 'db', 'app/server']

type Step = { readonly path: string; readonly way: readonly string[] }

/** What a file of the browser leads to. A call of a server action is a request: behind it the server begins again. */
function* stepsFrom(code: Code, start: string): Generator<Step & { readonly line: number; readonly to: string }> {
	const seen = new Set([start])
	const queue: Step[] = [{ path: start, way: [start] }]
	for (const { path, way } of queue)
		for (const { line, to } of code.at(path)?.links ?? []) {
			if (to.is !== 'ours' || code.at(to.path)?.directive === 'use server') continue
			yield { path, way, line, to: to.path }
			if (seen.has(to.path) || isKeptBack(to.path)) continue
			seen.add(to.path)
			queue.push({ path: to.path, way: [...way, to.path] })
		}
}

const isKeptBack = (path: string): boolean => keptBack.some((place) => isIn(path, place))

/** Where something of the browser's first steps over, each such place once. */
export function leaks(code: Code): Problem[] {
	const found = new Map<string, Problem>()
	for (const { path: start, directive } of code.sources) {
		if (directive !== 'use client') continue
		for (const { path, way, line, to } of stepsFrom(code, start)) {
			if (!isKeptBack(to) || found.has(`${path}:${line}`)) continue
			const is = `brings ${to} into the browser, by ${[...way, to].join(' → ')}`
			const instead =
				'hand the finished value in as a prop, or move the words and shapes that both need to their own file of `lib/`'
			found.set(`${path}:${line}`, { file: path, line, is, instead })
		}
	}
	return [...found.values()]
}
