import { describe } from 'vitest'
import { finds, holds } from '../code/judge'
import { type Arrow, idleShapes, type Shape, wrongArrows } from '../rules/arrows'
import { circles } from '../rules/circles'

const down = 'turn the arrow round: hand in what is needed, or move what both need down a floor'
const finished = 'take the finished value as a prop; the page asks for it'

/** Who may import whom. `demo` and `tests` have no row: they may import anything. */
const allowed: readonly Arrow[] = [
	{ from: 'lib', to: ['lib', 'lib/pricing'], because: 'the trade knows nothing above it', instead: down },
	{ from: 'lib/pricing', to: ['lib', 'lib/pricing'], because: 'it is a part of the trade', instead: down },
	{
		from: 'db',
		to: ['db', 'lib', 'lib/pricing'],
		because: 'the record decides with the trade, and knows no request',
		instead: down,
	},
	{
		from: 'app/ui',
		to: ['app/ui', 'lib'],
		because: 'a component formats finished values and never computes a price',
		instead: finished,
	},
	{
		from: 'part of a page',
		to: ['part of a page', 'action', 'app/ui', 'lib'],
		because: 'as a component; a form in it names the action that it goes to',
		instead: finished,
	},
	...(['page', 'action', 'app/server', 'app/documents'] as const).map(
		(from): Arrow => ({
			from,
			to: ['page', 'part of a page', 'action', 'app/ui', 'app/server', 'app/documents', 'db', 'lib', 'lib/pricing'],
			because: 'the top floor may look at all below it',
			instead: down,
		}),
	),
	{
		from: 'edge',
		to: ['app/server'],
		because: 'what Next insists on finding at the top only hands on',
		instead: 'let a file of app/server do it',
	},
	{
		from: 'e2e',
		to: ['e2e', 'demo', 'tests', 'db', 'lib', 'lib/pricing'],
		because: 'a browser knows the site by its pages; only its sign-in and its cast are written for it',
		instead: 'ask the running site',
	},
	{ from: 'settings', to: [], because: 'they are read by their tools alone', instead: 'write the value out' },
]

/** Parts of pages that name the shape of what a read of `db/` returns. Types alone, and never in `app/ui`. */
const shapes: readonly Shape[] = [
	{
		from: 'app/(client)/home/[client]/lines.tsx',
		to: 'db/clients/home.ts',
		because: 'a line of the home page, as its one read returns it',
	},
	{
		from: 'app/(client)/proposal/[proposal]/told.tsx',
		to: 'db/proposals/read-offer.ts',
		because: 'tells what the page of the offer read',
	},
	{
		from: 'app/(studio)/studio/proposal/[proposal]/asked.tsx',
		to: 'db/proposals/read-offer.ts',
		because: 'shows the notes of the answer as they were read',
	},
	{
		from: 'app/(studio)/studio/clients/[client]/place-part.tsx',
		to: 'db/clients/read-clients.ts',
		because: 'one place of the client page',
	},
	{
		from: 'app/(studio)/studio/clients/[client]/proposals.tsx',
		to: 'db/clients/read-clients.ts',
		because: 'the proposals of the client page',
	},
	{
		from: 'app/(studio)/studio/clients/[client]/contacts.tsx',
		to: 'db/clients/read-clients.ts',
		because: 'the contacts of the client page',
	},
	{
		from: 'app/(studio)/studio/clients/[client]/container/card-text.ts',
		to: 'db/clients/read-clients.ts',
		because: "turns the client page's card into the form's text",
	},
	{
		from: 'app/(studio)/studio/season/[season]/row.tsx',
		to: 'db/studio/season-page.ts',
		because: 'one row of the season page',
	},
	{
		from: 'app/(studio)/studio/season/[season]/ledger.tsx',
		to: 'db/studio/season-page.ts',
		because: 'the rows and totals of the season page',
	},
	{
		from: 'app/(studio)/studio/season/[season]/acts.tsx',
		to: 'db/studio/season-page.ts',
		because: 'the totals of the season page',
	},
]

const row: Shape = { from: 'app/(client)/home/lines.tsx', to: 'db/home.ts', because: 'a line of the home page' }

describe('three floors, one way down', () => {
	holds('every import goes down or stays on its floor', (code) => wrongArrows(code, allowed, shapes))
	holds('no row for a part of a page stands there without its import', (code) => idleShapes(code, shapes))
	finds(
		(code) => wrongArrows(code, allowed, [row]),
		[
			{
				name: 'the trade asks the record',
				files: { 'lib/price.ts': "import { read } from '@/db/open'", 'db/open.ts': '' },
				at: ['lib/price.ts:1'],
			},
			{
				name: 'the trade asks for a type of the record',
				files: { 'lib/price.ts': "\nimport type { Row } from '../db/row'", 'db/row.ts': '' },
				at: ['lib/price.ts:2'],
			},
			{
				name: 'the record asks for the session, at run time',
				files: { 'db/a.ts': "const s = await import('../app/server/session')", 'app/server/session.ts': '' },
				at: ['db/a.ts:1'],
			},
			{
				name: 'the record requires a component',
				files: { 'db/a.ts': "const s = require('@/app/ui/told')", 'app/ui/told.tsx': '' },
				at: ['db/a.ts:1'],
			},
			{
				name: 'the record hands on a part of the demo',
				files: { 'db/a.ts': "export * from '../demo/cast'", 'demo/cast/index.ts': '' },
				at: ['db/a.ts:1'],
			},
			{
				name: 'a type of the app is named in place',
				files: { 'lib/a.ts': "export type A = import('@/app/page').A", 'app/page.tsx': '' },
				at: ['lib/a.ts:1'],
			},
			{
				name: 'the old form of import',
				files: { 'lib/a.ts': "import a = require('../db/a')", 'db/a.ts': '' },
				at: ['lib/a.ts:1'],
			},
			{
				name: 'a path put together at run time',
				files: { 'app/page.tsx': "const a = await import('./' + name)" },
				at: ['app/page.tsx:1'],
			},
			{ name: 'a path where nothing lies', files: { 'app/page.tsx': "import './gone.css'" }, at: ['app/page.tsx:1'] },
			{
				name: 'the edge asks the record',
				files: { 'proxy.ts': "import { a } from './db/a'", 'db/a.ts': '' },
				at: ['proxy.ts:1'],
			},
			{
				name: 'the start asks the trade, at run time',
				files: { 'instrumentation.ts': "const a = await import('./lib/a')", 'lib/a.ts': '' },
				at: ['instrumentation.ts:1'],
			},
			{
				name: 'a component asks the record, the server and the price',
				files: {
					'app/ui/a.tsx':
						"import { a } from '@/db/a'\nimport { b } from '@/app/server/b'\nimport type { C } from '@/lib/pricing/c'",
					'db/a.ts': '',
					'app/server/b.ts': '',
					'lib/pricing/c.ts': '',
				},
				at: ['app/ui/a.tsx:1', 'app/ui/a.tsx:2', 'app/ui/a.tsx:3'],
			},
			{
				name: 'a component knows a shape of the record',
				files: { 'app/ui/lines.tsx': "import type { Line } from '@/db/home'", 'db/home.ts': '' },
				at: ['app/ui/lines.tsx:1'],
			},
			{
				name: 'a part of a page that has a row, but takes a value',
				files: { [row.from]: "import { lines } from '@/db/home'", [row.to]: '' },
				at: [`${row.from}:1`],
			},
			{
				name: 'a part of a page that has no row',
				files: { 'app/(client)/home/head.tsx': "import type { Home } from '@/db/home'", [row.to]: '' },
				at: ['app/(client)/home/head.tsx:1'],
			},
			{
				name: 'a part of a page that asks the server',
				files: { [row.from]: "import { now } from '@/app/server/start/clock'", 'app/server/clock.ts': '' },
				at: [`${row.from}:1`],
			},
			{
				name: 'a story that imports the site',
				files: { 'e2e/a.story.ts': "import { a } from '@/app/server/a'", 'app/server/a.ts': '' },
				at: ['e2e/a.story.ts:1'],
			},
			{
				name: 'nothing in what is right',
				files: {
					'lib/a.ts': "import { z } from 'zod'\nimport { b } from './b'",
					'lib/b.ts': '',
					'db/open.ts': "import type { B } from '@/lib/b'\nimport { a } from '@/lib/a.js'",
					'app/page.tsx':
						"import './site.css'\nimport { o } from '@/db/open'\nimport { L } from './(client)/home/lines'",
					'app/site.css': '',
					[row.from]: "import type { Line } from '@/db/home'",
					[row.to]: '',
					'proxy.ts': "import { s } from './app/server/s'",
					'app/server/s.ts': '',
					'demo/seed.ts': "import { o } from '@/db/open'\nimport { s } from '@/app/server/s'",
				},
				at: [],
			},
		],
	)
	finds(
		(code) => idleShapes(code, [row]),
		[
			{ name: 'a row whose import went', files: { [row.from]: '', [row.to]: '' }, at: [`${row.from}:1`] },
			{ name: 'a row whose file went', files: { [row.to]: '' }, at: [`${row.from}:1`] },
		],
	)
})

describe('no circle', () => {
	holds('no two files load one another', circles)
	finds(circles, [
		{
			name: 'two files that load one another',
			files: { 'lib/a.ts': "\nimport { b } from './b'", 'lib/b.ts': "import { a } from '@/lib/a'" },
			at: ['lib/a.ts:2'],
		},
		{
			name: 'three, by way of a re-export and an import at run time',
			files: {
				'db/a.ts': "export { b } from './b'",
				'db/b.ts': "const c = await import('./c')",
				'db/c.ts': "import { a } from './a'",
			},
			at: ['db/a.ts:1'],
		},
		{ name: 'a file that loads itself', files: { 'lib/a.ts': "import { a } from './a'" }, at: ['lib/a.ts:1'] },
		{
			name: 'two circles apart',
			files: {
				'lib/a.ts': "import './b'",
				'lib/b.ts': "import './a'\nimport './c'",
				'lib/c.ts': "import './d'",
				'lib/d.ts': "import './c'",
			},
			at: ['lib/c.ts:1', 'lib/a.ts:1'],
		},
		{
			name: 'a type marked one by one, which loads its module all the same',
			files: { 'lib/a.ts': "import { type B } from './b'", 'lib/b.ts': "import { a } from './a'" },
			at: ['lib/a.ts:1'],
		},
		{
			name: 'nothing in types, nor in two ways to one file',
			files: {
				'lib/a.ts': "import { b } from './b'\nimport { c } from './c'",
				'lib/b.ts': "import { c } from './c'",
				'lib/c.ts': "import type { A } from './a'",
			},
			at: [],
		},
	])
})
