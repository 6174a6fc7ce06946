import { z } from 'zod'
import type { Code } from '../code/code'
import type { Problem } from '../code/problem'

/** As Semantic Versioning 2.0.0 writes one version: three numbers, perhaps a pre-release. */
const exact = /^\d+\.\d+\.\d+(-[0-9A-Za-z.-]+)?$/
const node = '>=20.19'

type Nested = string | { [key: string]: Nested }
const nested: z.ZodType<Nested> = z.lazy(() => z.union([z.string(), z.record(z.string(), nested)]))
const versions = z.record(z.string(), z.string()).default({})
const packageSchema = z.looseObject({
	engines: z.looseObject({ node: z.string().optional() }).default({}),
	dependencies: versions,
	devDependencies: versions,
	optionalDependencies: versions,
	peerDependencies: versions,
	overrides: z.record(z.string(), nested).default({}),
})

const lineWith = (text: string, piece: string): number =>
	text.split('\n').findIndex((line) => line.includes(piece)) + 1 || 1

function* pins(name: string, value: Nested): Generator<{ name: string; version: string }> {
	if (typeof value === 'string') yield { name, version: value }
	else for (const [inner, each] of Object.entries(value)) yield* pins(inner, each)
}

function inPackage(text: string): Problem[] {
	const { engines, overrides, ...found } = packageSchema.parse(JSON.parse(text))
	const named = [found.dependencies, found.devDependencies, found.optionalDependencies, found.peerDependencies]
	const direct = named.flatMap((each) => Object.entries(each).map(([name, version]) => ({ name, version })))
	// An override may point at a version that stands above ("$name").
	const over = [...pins('', overrides)].filter(({ version }) => !version.startsWith('$'))
	const loose = [...direct, ...over]
		.filter(({ version }) => !exact.test(version))
		.map(({ name, version }) => ({
			file: 'package.json',
			line: lineWith(text, `"${name}": "${version}"`),
			is: `asks for ${name} ${version}`,
			instead: 'pin one version, as 1.2.3',
		}))
	const old = {
		file: 'package.json',
		line: lineWith(text, '"engines"'),
		is: `runs on Node ${engines.node ?? 'of any age'}`,
	}
	return engines.node === node ? loose : [...loose, { ...old, instead: `say ${node}` }]
}

const hosts = /"resolved"\s*:|"https?:\/\/[^"]+\.tgz"/

const inLock = (text: string): Problem[] =>
	text.split('\n').flatMap((line, index) =>
		hosts.test(line)
			? {
					file: 'package-lock.json',
					line: index + 1,
					is: 'names the host that a package came from',
					instead: 'keep omit-lockfile-registry-resolved=true in .npmrc and write the lock again',
				}
			: [],
	)

/** Versions that float, a lock that names a host, a Node that is not the one promised. */
export function packageTrouble({ files }: Code): Problem[] {
	const own = files.get('package.json')
	const lock = files.get('package-lock.json')
	const gone = (file: string): Problem => ({ file, line: 1, is: 'is not there', instead: 'put it back' })
	return [
		...(own === undefined ? [gone('package.json')] : inPackage(own)),
		...(lock === undefined ? [gone('package-lock.json')] : inLock(lock)),
	]
}
