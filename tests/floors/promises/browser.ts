import { describe } from 'vitest'
import { finds, holds } from '../code/judge'
import { strayActions } from '../rules/directives'
import { earlyPages, inlineStyles } from '../rules/marks'
import { leaks } from '../rules/reach'

const listens = "'use client'\n"

describe('what a browser gets', () => {
	holds('no file of the browser leads to the price, the record or the server, by value or by type', leaks)
	finds(leaks, [
		{
			name: 'a price by value, two files away',
			files: {
				'app/ui/a.tsx': `${listens}import { b } from './b'`,
				'app/ui/b.tsx': "import { price } from '@/lib/pricing/price'",
				'lib/pricing/price.ts': '',
			},
			at: ['app/ui/b.tsx:1'],
		},
		{
			name: 'a price by its type, behind a type',
			files: {
				'app/ui/a.tsx': `${listens}import type { B } from '@/lib/b'`,
				'lib/b.ts': "export type B = import('./pricing/rates').Rates",
				'lib/pricing/rates.ts': '',
			},
			at: ['lib/b.ts:1'],
		},
		{
			name: 'a row of the record, by type',
			files: { 'app/a.tsx': `${listens}import type { Row } from '@/db/row'`, 'db/row.ts': '' },
			at: ['app/a.tsx:2'],
		},
		{
			name: 'the session, when it is needed',
			files: { 'app/a.tsx': `${listens}const s = () => import('@/app/server/s')`, 'app/server/s.ts': '' },
			at: ['app/a.tsx:2'],
		},
		{
			name: 'one step over, told once for two that lead to it',
			files: {
				'app/a.tsx': `${listens}import '@/lib/c'`,
				'app/b.tsx': `${listens}import '@/lib/c'`,
				'lib/c.ts': "import './pricing/price'",
				'lib/pricing/price.ts': '',
			},
			at: ['lib/c.ts:1'],
		},
		{
			name: 'nothing behind a server action, nor in a page',
			files: {
				'app/(studio)/a.tsx': `${listens}import { save } from './actions'`,
				'app/(studio)/actions.ts': "'use server'\nimport { save } from '@/db/save'",
				'app/page.tsx': "import { save } from '@/db/save'\nimport { a } from './(studio)/a'",
				'db/save.ts': "import '@/lib/pricing/price'",
				'lib/pricing/price.ts': '',
			},
			at: [],
		},
	])
})

describe('server actions', () => {
	holds('server actions lie in the studio, in files of their own', strayActions)
	finds(strayActions, [
		{
			name: 'an action on a client page',
			files: { 'app/(client)/actions.ts': "'use server'\nexport async function a() {}" },
			at: ['app/(client)/actions.ts:1'],
		},
		{
			name: 'an action inside a component of the studio',
			files: { 'app/(studio)/a.tsx': "export function A() {\n\tasync function save() {\n\t\t'use server'\n\t}\n}" },
			at: ['app/(studio)/a.tsx:3'],
		},
		{
			name: 'an action inside an arrow',
			files: { 'app/ui/a.tsx': "const save = async () => { 'use server' }" },
			at: ['app/ui/a.tsx:1'],
		},
		{ name: 'nothing in the studio', files: { 'app/(studio)/actions.ts': "'use server'" }, at: [] },
	])
})

describe('what the policy and the access check rest on', () => {
	holds('no style attribute and no raw HTML outside mail', inlineStyles)
	finds(inlineStyles, [
		{
			name: 'a style attribute',
			files: { 'app/ui/a.tsx': "const a = <i\n\tstyle={{ color: 'red' }} />" },
			at: ['app/ui/a.tsx:2'],
		},
		{
			name: 'raw HTML, as an attribute and as a property',
			files: {
				'app/ui/a.tsx': 'const a = <i dangerouslySetInnerHTML={html} />\nconst b = { dangerouslySetInnerHTML: html }',
			},
			at: ['app/ui/a.tsx:1', 'app/ui/a.tsx:2'],
		},
		{
			name: 'a style attribute in HTML as text',
			files: { 'app/server/a.ts': 'const a = \'<p style="color:red">\'\nconst b = `<p class="c" style="\x24{d}">`' },
			at: ['app/server/a.ts:1', 'app/server/a.ts:2'],
		},
		{
			name: 'nothing in mail, nor in a class',
			files: {
				'app/documents/mail/a.tsx': "const a = <i style={{ color: 'red' }} />",
				'app/ui/a.tsx': 'const a = <i className="style" />',
			},
			at: [],
		},
	])
	holds('no loading.tsx and no Suspense', earlyPages)
	finds(earlyPages, [
		{
			name: 'a page that shows before it asks',
			files: { 'app/(client)/loading.tsx': '' },
			at: ['app/(client)/loading.tsx:1'],
		},
		{
			name: 'Suspense, taken from React and used',
			files: { 'app/page.tsx': "import { Suspense } from 'react'\nconst a = <Suspense><A /></Suspense>" },
			at: ['app/page.tsx:1', 'app/page.tsx:2'],
		},
		{
			name: 'Suspense by its full name',
			files: { 'app/page.tsx': 'const a = <React.Suspense />' },
			at: ['app/page.tsx:1'],
		},
		{ name: 'nothing in a page that waits', files: { 'app/page.tsx': 'const a = await b()' }, at: [] },
	])
})
