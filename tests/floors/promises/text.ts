import { describe } from 'vitest'
import { finds, holds } from '../code/judge'
import { anys, assertions, type Brander, silences } from '../rules/words'

const branders: readonly Brander[] = [
	{ file: 'lib/units/cents.ts', count: 1, because: 'Cents: a whole number was checked' },
	{ file: 'lib/units/day.ts', count: 1, because: 'Moment: the date was checked to be one' },
	{ file: 'lib/units/id.ts', count: 1, because: 'Id: the text was checked to be a UUID' },
	{ file: 'db/viewer.ts', count: 1, because: 'Viewer: made here alone, from the record' },
]

const one: Brander = { file: 'lib/cents.ts', count: 1, because: 'Cents' }

describe('what is said is so', () => {
	holds('no assertion but as const and in the constructors of branded types', (code) => assertions(code, branders))
	finds(
		(code) => assertions(code, [one]),
		[
			{ name: 'an assertion', files: { 'app/a.ts': 'const a = b as string' }, at: ['app/a.ts:1'] },
			{
				name: 'an assertion by way of unknown',
				files: { 'db/a.ts': 'const a = b as unknown as A' },
				at: ['db/a.ts:1', 'db/a.ts:1'],
			},
			{ name: 'an assertion in the old form', files: { 'lib/a.ts': 'const a = <string>b' }, at: ['lib/a.ts:1'] },
			{ name: 'one in a test', files: { 'tests/a.test.ts': '\nconst a = b as A' }, at: ['tests/a.test.ts:2'] },
			{
				name: 'a second one where one is listed',
				files: { 'lib/cents.ts': 'const a = n as Cents\nconst b = n as Cents' },
				at: ['lib/cents.ts:2'],
			},
			{ name: 'none where one is listed', files: { 'lib/cents.ts': '' }, at: ['lib/cents.ts:1'] },
			{
				name: 'nothing in as const, in satisfies and in a new name',
				files: {
					'lib/a.ts': "import { a as b } from 'zod'\nconst c = [1] as const\nconst d = {} satisfies D",
					'lib/cents.ts': 'const a = n as Cents',
				},
				at: [],
			},
		],
	)

	holds('no any', anys)
	finds(anys, [
		{
			name: 'any as a type, in a list and in a test',
			files: { 'lib/a.ts': 'let a: any\nlet b: Array<any>', 'tests/a.test.ts': 'const a = (b: any) => b' },
			at: ['lib/a.ts:1', 'lib/a.ts:2', 'tests/a.test.ts:1'],
		},
		{ name: 'nothing in the word', files: { 'lib/a.ts': "// any\nconst any = 'any'" }, at: [] },
	])

	holds('no comment turns a check off', silences)
	finds(silences, [
		{
			name: 'checks turned off, each in its own way',
			files: {
				'lib/a.ts': '// biome-ignore lint/a: b\n/* eslint-disable */\nconst a = 1 // @ts-ignore\n// @ts-nocheck',
			},
			at: ['lib/a.ts:1', 'lib/a.ts:2', 'lib/a.ts:3', 'lib/a.ts:4'],
		},
		{
			name: 'a check turned off in a component and in a sheet',
			files: {
				'app/a.tsx': 'const a = (\n\t<i>\n\t\t{/* biome-ignore a */}\n\t</i>\n)',
				'app/a.css': '\n/* biome-ignore a */',
			},
			at: ['app/a.tsx:3', 'app/a.css:2'],
		},
		{
			name: 'a type error expected outside a test',
			files: { 'db/a.ts': '// @ts-expect-error a\nf(1)', 'demo/a.ts': '// @ts-expect-error a\nf(1)' },
			at: ['db/a.ts:1', 'demo/a.ts:1'],
		},
		{
			name: 'a type error ignored in a test',
			files: { 'tests/a.test.ts': '// @ts-ignore\nf(1)' },
			at: ['tests/a.test.ts:1'],
		},
		{
			name: 'nothing in text, nor in a test that shows a type error',
			files: {
				'lib/a.ts': "const a = '// biome-ignore'",
				'tests/a.test.ts': '// @ts-expect-error a costing is no quote\nf(1)',
			},
			at: [],
		},
	])
})
