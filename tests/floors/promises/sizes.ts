import { afterAll, describe, expect, test } from 'vitest'
import { finds, holds, project } from '../code/judge'
import { told } from '../code/problem'
import { packageTrouble } from '../rules/package-file'
import { large, tooLarge } from '../rules/sizes'

const lines = (count: number) => 'const a = 1\n'.repeat(count)
const children = (folder: string, count: number) =>
	Object.fromEntries(Array.from({ length: count }, (_, index) => [`${folder}/${index}.ts`, '']))

describe('sizes', () => {
	test('the whole project was read', () => {
		const floors = ['lib', 'db', 'app', 'demo', 'tests'].map(
			(floor) => project.sources.filter(({ path }) => path.startsWith(`${floor}/`)).length > 20,
		)
		expect(floors).toEqual([true, true, true, true, true])
	})
	holds('no file of 250 lines and no folder of 16 children', tooLarge)
	finds(tooLarge, [
		{ name: 'a file of 250 lines', files: { 'app/a.tsx': lines(250), 'app/b.css': lines(249) }, at: ['app/a.tsx:250'] },
		{ name: 'a folder of 16 children', files: children('lib/a', 16), at: ['lib/a:1'] },
		{
			name: 'a folder that holds folders',
			files: Object.fromEntries(Array.from({ length: 16 }, (_, index) => [`db/${index}/a.ts`, ''])),
			at: ['db:1'],
		},
		{
			name: 'nothing in migrations, nor in a long cast',
			files: {
				...children('db/schema/migrations', 20),
				'demo/cast/a.ts': lines(300),
				'tests/a.test.ts': lines(300),
				...children('lib', 15),
			},
			at: [],
		},
	])
	finds(large, [
		{
			name: 'a file of lib worth a look',
			files: { 'lib/a.ts': lines(151), 'db/b.ts': lines(150) },
			at: ['lib/a.ts:151'],
		},
		{ name: 'a folder worth a look', files: { ...children('app/ui', 13), ...children('lib', 12) }, at: ['app/ui:1'] },
	])
	// Said, not refused.
	afterAll(() => {
		for (const each of large(project)) process.stdout.write(`worth a look: ${told(each)}\n`)
	})
})

const own = (dependencies: Record<string, string>, more: object = {}) =>
	JSON.stringify({ engines: { node: '>=20.19' }, dependencies, ...more }, null, '\t')
const lock = '{ "packages": { "node_modules/zod": { "version": "4.6.7" } } }'

describe('what is installed', () => {
	holds('every version is pinned, the lock names no host, and Node is at least 20.19', packageTrouble)
	finds(packageTrouble, [
		{
			name: 'versions that float',
			files: {
				'package.json': own({ zod: '^4.6.7', uuid: '~11.1.1', pino: '10', next: 'latest', react: '19.x' }),
				'package-lock.json': lock,
			},
			at: ['package.json:6', 'package.json:7', 'package.json:8', 'package.json:9', 'package.json:10'],
		},
		{
			name: 'versions that float elsewhere',
			files: {
				'package.json': own({}, { devDependencies: { vitest: '>=4' }, overrides: { a: { b: '1.x', c: '$zod' } } }),
				'package-lock.json': lock,
			},
			at: ['package.json:7', 'package.json:11'],
		},
		{
			name: 'a lock that names hosts',
			files: {
				'package.json': own({ zod: '4.6.7' }),
				'package-lock.json': '{\n"resolved": "file:a"\n,"b": "https://a.example/b.tgz"\n}',
			},
			at: ['package-lock.json:2', 'package-lock.json:3'],
		},
		{
			name: 'another Node',
			files: { 'package.json': '{ "engines": { "node": ">=18" } }', 'package-lock.json': lock },
			at: ['package.json:1'],
		},
		{ name: 'no lock', files: { 'package.json': own({}) }, at: ['package-lock.json:1'] },
		{
			name: 'nothing in pinned versions',
			files: { 'package.json': own({ zod: '4.6.7', next: '17.0.0-rc.1' }), 'package-lock.json': lock },
			at: [],
		},
	])
})
