import { isBuiltin } from 'node:module'
import ts from 'typescript'
import type { Files } from './files'

export type Target =
	| { readonly is: 'ours'; readonly path: string }
	| { readonly is: 'node'; readonly name: string }
	| { readonly is: 'package'; readonly name: string }
	/** Nothing of ours lies there, or where it lies is known only at run time. */
	| { readonly is: 'unknown' }

/** As `tsconfig.json` has it. */
const options: ts.CompilerOptions = {
	module: ts.ModuleKind.ESNext,
	moduleResolution: ts.ModuleResolutionKind.Bundler,
	baseUrl: '/',
	paths: { '@/*': ['./*'] },
	jsx: ts.JsxEmit.ReactJSX,
	allowJs: true,
	resolveJsonModule: true,
}

const isOurs = /^(\.{1,2}(\/|$)|@\/|\/)/

/** "next/server" becomes "next", "@auth/core/types" becomes "@auth/core". */
export const packageOf = (specifier: string): string =>
	specifier
		.split('/')
		.slice(0, specifier.startsWith('@') ? 2 : 1)
		.join('/')

/** A stylesheet or a picture, which the compiler does not look for. */
function asset(files: Files, from: string, specifier: string): Target {
	const base = specifier.startsWith('@/') ? specifier.slice(2) : `${from}/../${specifier}`
	const path = new URL(base, 'file:///').pathname.slice(1)
	const plain = decodeURIComponent(path)
	return files.has(plain) ? { is: 'ours', path: plain } : { is: 'unknown' }
}

/** Where an import leads. Ours are sought by the compiler's own rules, among `files` alone. */
export function resolver(files: Files): (from: string, specifier: string | null) => Target {
	const host: ts.ModuleResolutionHost = {
		fileExists: (name) => files.has(name.slice(1)),
		readFile: (name) => files.get(name.slice(1)),
	}
	return (from, specifier) => {
		if (specifier === null) return { is: 'unknown' }
		if (isBuiltin(specifier)) return { is: 'node', name: specifier.replace(/^(node:)?/, 'node:') }
		if (!isOurs.test(specifier)) return { is: 'package', name: specifier }
		const { resolvedModule } = ts.resolveModuleName(specifier, `/${from}`, options, host)
		if (resolvedModule === undefined) return asset(files, from, specifier)
		const path = resolvedModule.resolvedFileName.slice(1)
		// Where types stand in a file of their own, the script beside them is what runs.
		const script = path.replace(/\.d\.mts$/, '.mjs')
		return { is: 'ours', path: files.has(script) ? script : path }
	}
}
