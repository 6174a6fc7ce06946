import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'

/** Path from the root of the project to text; a picture or a font is there with its name alone. */
export type Files = ReadonlyMap<string, string>

const root = fileURLToPath(new URL('../../..', import.meta.url))

/** Made by tools, or somebody else's. `tests/bench/bare` is a site of its own, the one ours is measured against. */
const notOurs = /(^|\/)(node_modules|output)$|^\.[^/]+\/?$|^tests\/bench\/bare$|^next-env\.d\.ts$|\.tsbuildinfo$/
const hasText = /\.(m?[jt]sx?|css|json)$/

function* under(folder: string): Generator<string> {
	for (const entry of readdirSync(join(root, folder), { withFileTypes: true })) {
		const path = folder === '' ? entry.name : `${folder}/${entry.name}`
		if (notOurs.test(path)) continue
		if (entry.isDirectory()) yield* under(path)
		else yield path
	}
}

/** The project as it lies on the disk. */
export function filesOfProject(): Files {
	const paths = [...under('')].toSorted()
	return new Map(paths.map((path) => [path, hasText.test(path) ? readFileSync(join(root, path), 'utf8') : '']))
}
