import type { Code } from '../code/code'
import type { Problem } from '../code/problem'

type Graph = ReadonlyMap<string, readonly string[]>

const valueGraph = ({ sources }: Code): Graph =>
	new Map(
		sources.map(({ path, links }) => [
			path,
			links.flatMap(({ kind, to }) => (kind === 'value' && to.is === 'ours' ? [to.path] : [])),
		]),
	)

/** The shortest way from `start` back to itself; undefined when there is none. */
function wayBack(graph: Graph, start: string): string[] | undefined {
	const cameFrom = new Map<string, string>()
	const queue = [start]
	for (const here of queue)
		for (const next of graph.get(here) ?? []) {
			if (next === start) return pathTo(cameFrom, start, here)
			if (cameFrom.has(next)) continue
			cameFrom.set(next, here)
			queue.push(next)
		}
	return undefined
}

function pathTo(cameFrom: ReadonlyMap<string, string>, start: string, end: string): string[] {
	const way = [end]
	for (let at = end; at !== start; ) {
		at = cameFrom.get(at) ?? start
		way.unshift(at)
	}
	return way
}

/** Strongly connected components (Tarjan, SIAM Journal on Computing 1, 1972), those of more than one file. */
export function components(graph: Graph): string[][] {
	const index = new Map<string, number>()
	const low = new Map<string, number>()
	const stack: string[] = []
	const found: string[][] = []
	const lowOf = (node: string) => low.get(node) ?? 0
	const visit = (node: string): void => {
		const mine = index.size
		index.set(node, mine)
		low.set(node, mine)
		stack.push(node)
		for (const next of graph.get(node) ?? []) {
			if (!index.has(next)) visit(next)
			if (stack.includes(next)) low.set(node, Math.min(lowOf(node), lowOf(next)))
		}
		if (lowOf(node) !== mine) return
		const together = stack.splice(stack.indexOf(node))
		if (together.length > 1 || graph.get(node)?.includes(node)) found.push(together.toSorted())
	}
	for (const node of graph.keys()) if (!index.has(node)) visit(node)
	return found
}

/** Files that load one another in a circle, each told with its shortest way round. */
export function circles(code: Code): Problem[] {
	const graph = valueGraph(code)
	return components(graph).flatMap(([first = '', ...others]) => {
		const way = wayBack(graph, first) ?? [first]
		const next = way[1] ?? first
		const link = code.at(first)?.links.find(({ kind, to }) => kind === 'value' && to.is === 'ours' && to.path === next)
		const also = others.length + 1 > way.length ? ` (${others.length + 1} files hang together)` : ''
		return {
			file: first,
			line: link?.line ?? 1,
			is: `imports itself by way of ${[...way, first].join(' → ')}${also}`,
			instead: 'move what both need into a file of its own, or hand it in; where only a type is needed, `import type`',
		}
	})
}
