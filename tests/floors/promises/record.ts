import { describe } from 'vitest'
import { finds, holds } from '../code/judge'
import { type Inside, reachedInsides } from '../rules/insides'
import { idleExceptions, viewerless, type Without } from '../rules/viewer-first'

/** What `db/` exports without a viewer: by file and name, each with its reason. */
const exceptions: readonly Without[] = [
	{
		file: 'db/viewer.ts',
		names: ['viewerOf'],
		because: 'the one maker of a viewer, out of who was found to be asking',
	},
	{
		file: 'db/viewer.ts',
		names: ['visibleNow'],
		because: 'the same condition for a statement that is prepared once: without what `seenBy` says it cannot be asked',
	},
	{
		file: 'db/open.ts',
		names: ['databaseFile', 'connect', 'openDatabase', 'closeDatabase', 'dataFolder', 'read', 'prepared', 'write'],
		because: 'opens the file; `read` and `write` are what a viewer is asked about inside `db/`',
	},
	{
		file: 'db/house/side-file.ts',
		names: ['openSideFile', 'closeSideFile', 'sideFile'],
		because: 'opens the file of what may be lost',
	},
	{ file: 'db/start/start.ts', names: ['checkSchema', 'start', 'isDemo'], because: 'before the start nobody is there' },
	{
		file: 'db/start/program.ts',
		names: ['studioFolder', 'openStudio', 'program'],
		because: 'finds and opens the record for a program of the command line, which then makes its viewer',
	},
	{
		file: 'db/start/set-up.ts',
		names: ['offerSetUp', 'isSetUpLink', 'setUpStudio'],
		because: 'an empty studio has nobody who could be a viewer; the link is the right to it',
	},
	{
		file: 'db/sign-in/adapter.ts',
		names: ['stored', 'sessionAdapter'],
		because: "wraps the session library's adapter: before the sign-in nobody is known",
	},
	{
		file: 'db/sign-in/activity.ts',
		names: ['lastUse', 'noteUse', 'isIdle'],
		because: 'when a session was used, by the hash of its token; whoever asks was looked at by the function that calls',
	},
	{
		file: 'db/sign-in/ask.ts',
		names: ['askForLink', 'addressOfHandle'],
		because: 'whoever asks for a link is not yet known',
	},
	{
		file: 'db/sign-in/session.ts',
		names: ['personOfSession', 'endSession', 'sweepSignIn'],
		because: 'the token of the session is the right to it; a viewer is made from what it gives',
	},
	{
		file: 'db/sign-in/token.ts',
		names: ['linkHashOf', 'keepToken', 'holderOfLink', 'tryCode', 'personWith'],
		because: 'the token of the link is the right to it',
	},
	{
		file: 'db/agreements/papers/files.ts',
		names: ['writePaper', 'paperBytes', 'removePapers', 'papersOnDisk', 'backUpPapers'],
		because: 'files of signed documents by their hashes; whoever asks was looked at by the function of `db` that calls',
	},
	{
		file: 'db/agreements/papers/carry.ts',
		names: ['carryFiles'],
		because: 'from folder to folder, for the backup and for the program that restores one',
	},
	{
		file: 'db/clients/visits/photos/files.ts',
		names: ['writePhoto', 'readPhoto', 'removePhotos', 'photosOnDisk'],
		because: 'files of photos by their ids; whoever asks was looked at by the function of `db` that calls',
	},
	{
		file: 'db/agreements/scans/files.ts',
		names: ['writeScan', 'scanBytes', 'removeScans', 'backUpScans'],
		because: 'pictures of paper signatures by their hashes; the function of `db` that calls looked at whoever asks',
	},
	{
		file: 'db/clients/visits/photos/with-photos.ts',
		names: ['withPhotos'],
		because: 'files go before the transaction that names them; its act takes the viewer',
	},
	{
		file: 'db/clients/visits/refused.ts',
		names: ['Refused', 'orRefused'],
		because: 'what a transaction is undone with, and what was said by it; no record passes through it',
	},
	{
		file: 'db/schema/columns.ts',
		names: ['idColumn', 'momentColumn', 'dayColumn', 'hexColumn', 'oneOf', 'between'],
		because: 'columns of a table that is being described: no record passes through them',
	},
	{
		file: 'db/schema/drizzle.config.ts',
		names: ['default'],
		because: "settings of drizzle-kit, in that tool's own form",
	},
]

const insides: readonly Inside[] = [
	{
		place: 'db/open.ts',
		because: 'gives the connection to whoever asks',
		except: [
			{ file: 'e2e/site/session.ts', because: 'a story signs in by writing a session from a process of its own' },
		],
	},
	{ place: 'db/record/append.ts', because: 'a line of the record is written with what it reports', except: [] },
	{ place: 'db/record/seal.ts', because: 'words are put away and fetched with what they belong to', except: [] },
	{ place: 'db/outbox/enqueue.ts', because: 'a mail is written with what it reports', except: [] },
	{
		place: 'db/agreements/papers/files.ts',
		because: 'files are read and written with the rows that name them',
		except: [],
	},
	{
		place: 'db/clients/visits/photos/files.ts',
		because: 'photos are read and written with the rows that name them',
		except: [],
	},
	{
		place: 'db/agreements/scans/files.ts',
		because: 'the picture of a paper signature is read and written with the signature that names it',
		except: [],
	},
	{ place: 'db/schema', because: 'no row and no table leaves the record', except: [] },
	{
		place: 'db/house/side-file.ts',
		because: 'gives the connection to whoever asks',
		except: [{ file: 'app/server/edge/limits.ts', because: 'the counters of the rate limiter take a connection' }],
	},
]

const from = "import type { Viewer } from '@/lib/access/viewer'\nimport { type Reading, read, type Tx } from './open'\n"
const floor = { 'lib/access/viewer.ts': '', 'db/open.ts': '' }
const third = (text: string) => ({ files: { ...floor, 'db/a.ts': `${from}${text}` }, at: ['db/a.ts:3'] })

describe('who comes first', () => {
	holds('whatever db exports takes the viewer, or the inside of a transaction, first', (code) =>
		viewerless(code, exceptions),
	)
	holds('no exception stands there without need', (code) => idleExceptions(code, exceptions))
	finds(
		(code) => viewerless(code, exceptions),
		[
			{ name: 'a read by id alone', ...third('export async function find(id: string) {}') },
			{ name: 'a read that asks for nothing', ...third('export const all = () => read((db) => db)') },
			{ name: 'the viewer in the second place', ...third('export function find(id: string, viewer: Viewer) {}') },
			{ name: 'a viewer that may be missing', ...third('export function find(viewer: Viewer | undefined) {}') },
			{ name: 'a function in an object', ...third('export const places = { find: (id: string) => id }') },
			{ name: 'a function in a list', ...third('export const acts = [function (id: string) {}] as const') },
			{ name: 'a function made by another', ...third('export const find = cache((id: string) => id)') },
			{ name: 'a function by another name', ...third('export const find = read') },
			{ name: 'a function put in later', ...third('export let find: (id: string) => string') },
			{ name: 'functions of another object', ...third('export const all = { ...read }') },
			{ name: 'an object of a class', ...third('export const store = new Store()') },
			{ name: 'an export apart from its function', ...third('function find(id: string) {} export { find }') },
			{ name: 'an inside handed on', ...third("export { write } from './open'") },
			{ name: 'a class', ...third('export class Store { find(id: string) {} }') },
			{ name: 'a default export', ...third('export default function (id: string) {}') },
			{
				name: 'a viewer of its own making',
				files: { ...floor, 'db/a.ts': 'type Viewer = string\nexport function find(viewer: Viewer) {}' },
				at: ['db/a.ts:2'],
			},
			{
				name: 'a viewer of somebody else',
				files: {
					...floor,
					'db/mine.ts': '',
					'db/a.ts': "import type { Viewer } from './mine'\nexport const find = (viewer: Viewer) => viewer",
				},
				at: ['db/a.ts:2'],
			},
			{
				name: 'another name in a file with an exception',
				files: { ...floor, 'db/house/side-file.ts': 'export function sideFile() {}\nexport function everything() {}' },
				at: ['db/house/side-file.ts:2'],
			},
			{
				name: 'nothing where it comes first',
				files: {
					...floor,
					'db/a.ts': [
						`${from}import { z } from 'zod'`,
						'export async function find(viewer: Viewer, id: string) {}',
						'export function append(tx: Tx) {}',
						'export const unseal = (db: Reading) => db',
						'export const shape = z.strictObject({ name: z.string() })',
						"export const table = sqliteTable('a', { id: text('id') }, (row) => [row.id])",
						'const hour = 3_600_000',
						'export const ms = { staff: 12 * hour, contact: -1 } as const',
						'export const hidden: { ok: false } = { ok: false }',
						'export type Found = { readonly id: string }',
						"export type { Viewer } from '@/lib/access/viewer'",
						'const inside = (id: string) => id',
					].join('\n'),
				},
				at: [],
			},
		],
	)
	finds(
		(code) => idleExceptions(code, [{ file: 'db/a.ts', names: ['find', 'gone', 'bare'], because: '' }]),
		[
			{
				name: 'an exception that lost its reason',
				files: {
					...floor,
					'db/a.ts': `${from}export function find(viewer: Viewer) {}\nexport function bare() {}`,
				},
				at: ['db/a.ts:1', 'db/a.ts:1'],
			},
		],
	)
})

describe('the inside of the record', () => {
	holds('nobody outside db reads or writes past its functions', (code) => reachedInsides(code, insides))
	finds(
		(code) => reachedInsides(code, insides),
		[
			{
				name: 'a page that reads, an action that writes',
				files: {
					'db/open.ts': '',
					'app/page.tsx': "import { read } from '@/db/open'",
					'app/(studio)/actions.ts': "'use server'\nconst { write } = await import('@/db/open')",
				},
				at: ['app/page.tsx:1', 'app/(studio)/actions.ts:2'],
			},
			{
				name: 'a line, words and a mail of its own',
				files: {
					'app/server/a.ts':
						"import { append } from '@/db/record/append'\nimport { unseal } from '@/db/record/seal'\nexport * from '@/db/outbox/enqueue'",
					'db/record/append.ts': '',
					'db/record/seal.ts': '',
					'db/outbox/enqueue.ts': '',
				},
				at: ['app/server/a.ts:1', 'app/server/a.ts:2', 'app/server/a.ts:3'],
			},
			{
				name: 'tables in a story and in a part of a page',
				files: {
					'db/schema/index.ts': '',
					'db/schema/people.ts': '',
					'e2e/a.ts': "import { person } from '@/db/schema'",
					'app/(client)/a.tsx': "import { person } from '@/db/schema/people'",
				},
				at: ['e2e/a.ts:1', 'app/(client)/a.tsx:1'],
			},
			{
				name: 'the connection where it hangs',
				files: { 'app/server/a.ts': "globalThis.doorsillDatabase?.db\nglobalThis['doorsillSideFile']" },
				at: ['app/server/a.ts:1', 'app/server/a.ts:2'],
			},
			{
				name: 'the side file anywhere but in the rate limiter',
				files: {
					'db/house/side-file.ts': '',
					'app/server/a.ts': "import { sideFile } from '@/db/house/side-file'",
					'app/server/edge/limits.ts': "import { sideFile } from '@/db/house/side-file'",
				},
				at: ['app/server/a.ts:1'],
			},
			{
				name: 'nothing in types, in tests, in the cast and in the record itself',
				files: {
					'db/open.ts': '',
					'db/a.ts': "import { read } from './open'",
					'demo/a.ts': "import { openDatabase } from '@/db/open'",
					'tests/a.ts': "import { write } from '@/db/open'",
					'app/a.ts': "import type { Tx } from '@/db/open'",
				},
				at: [],
			},
		],
	)
})
