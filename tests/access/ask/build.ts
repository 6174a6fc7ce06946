import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { z } from 'zod'

/** The folder that the build was made into. */
export const built = join(import.meta.dirname, '..', '..', '..', '.next')
const readJson = (...path: string[]): unknown => JSON.parse(readFileSync(join(built, ...path), 'utf8'))

export type BuiltRoute = { readonly route: string; readonly is: 'page' | 'handler' }

/** Every route that the build made. */
export function builtRoutes(): BuiltRoute[] {
	const routes = z.record(z.string(), z.string()).parse(readJson('app-path-routes-manifest.json'))
	return Object.entries(routes).map(([file, route]) => ({ route, is: file.endsWith('/page') ? 'page' : 'handler' }))
}

export type BuiltAction = {
	readonly id: string
	readonly name: string
	/** The pages whose forms carry it. */
	readonly routes: readonly string[]
}

const action = z.object({ exportedName: z.string(), workers: z.record(z.string(), z.unknown()) })

/** Every server action that the build made, with the id that a request names it by. */
export function builtActions(): BuiltAction[] {
	const manifest = z.object({ node: z.record(z.string(), action), edge: z.record(z.string(), action) })
	const routes = z.record(z.string(), z.string()).parse(readJson('app-path-routes-manifest.json'))
	const { node, edge } = manifest.parse(readJson('server', 'server-reference-manifest.json'))
	return Object.entries({ ...node, ...edge }).map(([id, { exportedName, workers }]) => ({
		id,
		name: exportedName,
		routes: Object.keys(workers).flatMap((file) => routes[file.replace(/^app/, '')] ?? []),
	}))
}

export function actionNamed(name: string): BuiltAction {
	const found = builtActions().find((each) => each.name === name)
	if (found === undefined) throw new Error(`The build has no action ${name}.`)
	return found
}
