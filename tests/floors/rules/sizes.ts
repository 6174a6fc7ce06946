import { type Code, isIn } from '../code/code'
import type { Problem } from '../code/problem'

/** From `look` on one should look again; from `most` on it is refused. */
type Limit = { readonly look: number; readonly most: number }

const lines: Limit = { look: 150, most: 250 }
const children: Limit = { look: 12, most: 16 }

const measured = /\.(m?[jt]sx?|css)$/
const long = ['db/schema/migrations', 'demo/cast', 'tests']

const linesOf = (text: string): number => text.replace(/\n$/, '').split('\n').length

const sizes = ({ files }: Code): { path: string; count: number }[] =>
	[...files]
		.filter(([path]) => measured.test(path) && !long.some((place) => isIn(path, place)))
		.map(([path, text]) => ({ path, count: linesOf(text) }))

/** How many files and folders lie in each folder. What lies at the top is what Next and npm insist on. */
function folders({ files }: Code): { path: string; count: number }[] {
	const inside = new Map<string, Set<string>>()
	for (const path of files.keys())
		path.split('/').forEach((name, depth, parts) => {
			if (depth === 0) return
			const folder = parts.slice(0, depth).join('/')
			inside.set(folder, (inside.get(folder) ?? new Set()).add(name))
		})
	return [...inside]
		.filter(([path]) => !isIn(path, 'db/schema/migrations'))
		.map(([path, all]) => ({ path, count: all.size }))
}

const inFile = ({ path, count }: { path: string; count: number }): Problem => ({
	file: path,
	line: count,
	is: `has ${count} lines`,
	instead: 'find the second idea in it and give that its own file',
})

const inFolder = ({ path, count }: { path: string; count: number }): Problem => ({
	file: path,
	line: 1,
	is: `has ${count} children`,
	instead: 'find what belongs together in it and give that a folder',
})

export const tooLarge = (code: Code): Problem[] => [
	...sizes(code)
		.filter(({ count }) => count >= lines.most)
		.map(inFile),
	...folders(code)
		.filter(({ count }) => count >= children.most)
		.map(inFolder),
]

/** What is not refused, and worth a look: files of `lib` and `db` alone, and any folder. */
export const large = (code: Code): Problem[] => [
	...sizes(code)
		.filter(({ path, count }) => (isIn(path, 'lib') || isIn(path, 'db')) && count > lines.look && count < lines.most)
		.map(inFile),
	...folders(code)
		.filter(({ count }) => count > children.look && count < children.most)
		.map(inFolder),
]
