import type { Act } from '@/lib/access/table'
import type { Column } from '../site/people'
import { agreementRows } from './agreement-rows'
import { moneyActions, moneyRows } from './money-rows'
import { studioAgreementActions, studioAgreementRows } from './studio-agreement-rows'

/**
 * What the site says: a page (200), data as JSON (200), a file (200), noted (204), on to sign-in or elsewhere (30x),
 * signed out (401), hidden (404), forbidden (403), no method (405), unclear (400), failed (500).
 */
export type Said =
	| 'page'
	| 'data'
	| 'file'
	| 'noted'
	| 'sign-in'
	| 'elsewhere'
	| 'signed out'
	| 'hidden'
	| 'forbidden'
	| 'no method'
	| 'unclear'
	| 'failed'

export type Says = Readonly<Record<Column, Said>>

/** What the id in an address names. */
export type Thing =
	| 'nothing'
	| 'recipe'
	| 'client'
	| 'proposal'
	| 'answered proposal'
	| 'season'
	| 'visit'
	| 'photo'
	| 'agreement'
	| 'invoice'

export type Row = {
	/** As the build names it. */
	readonly route: string
	/** The address itself, where the route alone does not say it. */
	readonly path?: string
	readonly method: 'GET' | 'POST'
	/** The line of the table of rights that decides; null where nobody has to be anybody. */
	readonly act: Act | null
	readonly of: Thing
	readonly says: Says
	/** Where a contact of two clients is told something else than one of one. */
	readonly twoDoors?: Said
	/** Where HEAD is told something else than GET. */
	readonly head?: Says
	/** Where a form is told something else than "no method", or of a page than GET. */
	readonly posted?: Said
	/** Whose request changes the record. */
	readonly writes?: readonly Column[]
}

export const columns = [
	'designer',
	'helper',
	'approver',
	'payer',
	'looker',
	'contact of another client',
	'signed out',
] as const

/** Says the same to everybody. */
function all(said: Said): Says {
	return {
		designer: said,
		helper: said,
		approver: said,
		payer: said,
		looker: said,
		'contact of another client': said,
		'signed out': said,
	}
}

const nobody: Says = { ...all('hidden'), 'signed out': 'sign-in' }
const designer: Says = { ...nobody, designer: 'page' }
const staff: Says = { ...designer, helper: 'page' }
const contact: Says = { ...nobody, approver: 'page', payer: 'page', looker: 'page' }
const reader: Says = { ...contact, designer: 'page' }
const recorded: Says = { ...nobody, designer: 'elsewhere', helper: 'elsewhere' }
const written: Says = { ...nobody, designer: 'elsewhere' }
const reported: Says = { ...nobody, approver: 'elsewhere', payer: 'elsewhere', looker: 'elsewhere' }
const approver: Says = { ...reader, designer: 'forbidden', payer: 'forbidden', looker: 'forbidden' }

type More = Pick<Row, 'twoDoors' | 'head' | 'posted' | 'writes' | 'path'>

const get = (route: string, act: Act | null, of: Thing, says: Says, more: More = {}): Row => ({
	...{ route, method: 'GET', act, of, says },
	...more,
})
const post = (route: string, act: Act | null, of: Thing, says: Says, more: More = {}): Row => ({
	...get(route, act, of, says, more),
	method: 'POST',
})

const toTheirOwn = { ...all('elsewhere'), 'signed out': 'sign-in' } as const
const answer = { ...approver, approver: 'elsewhere' } as const
const desk = { ...nobody, designer: 'data', 'signed out': 'signed out' } as const

/** A picture is a file to those who may see what it shows, and not there for all others, signed in or not. */
const seenBy = (says: Says): Says => ({
	...all('hidden'),
	...Object.fromEntries(columns.filter((column) => says[column] === 'page').map((column) => [column, 'file' as const])),
})

/** What is not approved has no file: whoever may see it is led to where it stands. */
const stands = {
	...all('hidden'),
	designer: 'elsewhere',
	approver: 'elsewhere',
	payer: 'elsewhere',
	looker: 'elsewhere',
} as const

const clientRows: readonly Row[] = [
	get('/proposal/[proposal]/picture/[revision]', 'see the proposal', 'proposal', seenBy(reader)),
	get('/home', null, 'nothing', { ...nobody, 'contact of another client': 'elsewhere' }, { twoDoors: 'page' }),
	get('/home/[client]', 'see the client', 'client', contact),
	get('/home/[client]/visits', 'see the client', 'client', contact),
	get('/home/[client]/wrong', 'say what is wrong', 'client', contact),
	post('/home/[client]/wrong/send', 'say what is wrong', 'client', reported, {
		writes: ['approver', 'payer', 'looker'],
	}),
	get('/photo/[photo]/[size]', 'see a photo', 'photo', seenBy({ ...reader, helper: 'page' })),
	get('/proposal/[proposal]', 'see the proposal', 'proposal', reader),
	get('/proposal/[proposal]/pdf', 'see the proposal', 'answered proposal', seenBy(reader)),
	get('/proposal/[proposal]/pdf', 'see the proposal', 'proposal', stands),
	get('/proposal/[proposal]/approve', 'answer the proposal', 'proposal', approver),
	get('/proposal/[proposal]/change', 'answer the proposal', 'proposal', approver),
	get('/proposal/[proposal]/skip', 'answer the proposal', 'proposal', approver),
	get('/proposal/[proposal]/done', 'see the proposal', 'answered proposal', reader),
	post('/proposal/[proposal]/answer/approve', 'answer the proposal', 'proposal', answer, { writes: ['approver'] }),
	post('/proposal/[proposal]/answer/change', 'answer the proposal', 'proposal', answer, { writes: ['approver'] }),
	post('/proposal/[proposal]/answer/skip', 'answer the proposal', 'proposal', answer, { writes: ['approver'] }),
]

const studioRows: readonly Row[] = [
	get('/studio/proposal/[proposal]/preview/picture', 'see the draft', 'proposal', seenBy(designer)),
	post('/studio/proposal/[proposal]/grow', 'see the draft', 'proposal', desk),
	post('/studio/proposal/[proposal]/substitutes', 'see the draft', 'proposal', desk),
	post('/studio/proposal/[proposal]/propose', 'see the draft', 'proposal', desk),
	post('/studio/clients/[client]/photo', 'see clients', 'client', desk),
	get('/studio', 'see the season', 'nothing', { ...designer, designer: 'elsewhere' }),
	get('/studio/season/[season]', 'see the season', 'season', designer),
	get('/studio/season/[season]/collection', 'see the catalogue', 'season', designer),
	get('/studio/season/[season]/apply', 'change the draft', 'season', designer),
	get('/studio/season/[season]/start', 'change the draft', 'season', designer),
	get('/studio/season/[season]/publish', 'publish', 'season', designer),
	// A proposal that does not wait for the studio: what is asked is looked at, and nothing comes of it.
	post('/studio/season/[season]/publish/send', 'publish', 'season', { ...nobody, designer: 'elsewhere' }),
	get('/studio/proposal/[proposal]/phone', 'answer by phone', 'proposal', designer),
	get('/studio/install', 'see what to install', 'nothing', staff),
	get('/studio/visits', 'see visits', 'nothing', staff),
	get('/studio/visits/[visit]', 'see visits', 'visit', staff),
	post('/studio/visits/[visit]/keep', 'record visits', 'visit', recorded, { writes: ['designer', 'helper'] }),
	get('/studio/visits/new/[client]', 'record visits', 'client', staff),
	post('/studio/visits/new/[client]/keep', 'record visits', 'client', recorded, { writes: ['designer', 'helper'] }),
	get('/studio/clients', 'see clients', 'nothing', designer),
	get('/studio/clients/new', 'change clients', 'nothing', designer),
	get('/studio/clients/[client]', 'see clients', 'client', designer),
	get('/studio/clients/[client]/edit', 'change clients', 'client', designer),
	get('/studio/clients/[client]/place', 'change clients', 'client', designer),
	get('/studio/clients/[client]/container', 'change clients', 'client', designer),
	get('/studio/clients/[client]/kerb', 'change clients', 'client', designer),
	post('/studio/clients/[client]/kerb/keep', 'change clients', 'client', written, { writes: ['designer'] }),
	get('/studio/recipes', 'see the catalogue', 'nothing', designer),
	get('/studio/recipes/card', 'change the catalogue', 'nothing', designer),
	get('/studio/recipes/[recipe]/picture', 'see the catalogue', 'recipe', seenBy(designer)),
	get('/studio/suppliers', 'see the catalogue', 'nothing', designer),
	get('/studio/materials', 'see the catalogue', 'nothing', designer),
	get('/studio/materials/card', 'change the catalogue', 'nothing', designer),
	get('/studio/settings', 'change settings', 'nothing', designer),
	get('/studio/rates', 'change settings', 'nothing', designer),
	get('/studio/proposal/[proposal]', 'see the draft', 'proposal', designer),
	get('/studio/proposal/[proposal]/preview', 'see the draft', 'proposal', designer),
	post('/studio/proposal/[proposal]/price', 'see the costing', 'proposal', desk),
	post('/studio/proposal/[proposal]/save', 'change the draft', 'proposal', desk, { writes: ['designer'] }),
]

const publicRows: readonly Row[] = [
	get('/', null, 'nothing', toTheirOwn),
	get('/sign-in', null, 'nothing', all('page')),
	get('/sign-in/sent', null, 'nothing', all('sign-in')),
	get('/sign-in/over', null, 'nothing', all('page')),
	get('/sign-in/confirm', null, 'nothing', all('elsewhere')),
	post('/sign-in/ask', null, 'nothing', all('elsewhere'), { writes: columns }),
	post('/sign-in/code', null, 'nothing', all('sign-in')),
	post('/sign-out', null, 'nothing', all('sign-in'), { writes: columns }),
	// Everybody's own: whoever is signed in has some, and a handle that is not theirs is as none.
	get('/devices', null, 'nothing', { ...all('page'), 'signed out': 'sign-in' }),
	post('/devices/end', null, 'nothing', nobody),
	post('/devices/everywhere', null, 'nothing', all('sign-in'), { writes: columns }),
	get('/set-up', null, 'nothing', all('hidden')),
	post('/set-up/make', null, 'nothing', all('hidden')),
	post('/csp-report', null, 'nothing', all('noted')),
	get('/tint/[colours]', null, 'nothing', all('file'), { path: '/tint/5f7488-b5653a.css' }),
	get('/cover/[picture]', 'see a cover', 'nothing', all('hidden'), { path: `/cover/${'f'.repeat(32)}.png` }),
	get('/icon.svg', null, 'nothing', all('file'), { posted: 'file' }),
	// Mail that went to a mail server leaves no copies to be read, in a demo either.
	get('/demo/mail', 'read mail copies', 'nothing', all('hidden')),
	get('/demo/mail/[picture]', 'read mail copies', 'nothing', all('hidden'), {
		path: '/demo/mail/01990000-0000-7000-8000-000000000000.1.jpg',
	}),
	get('/_not-found', null, 'nothing', all('hidden')),
	// The framework's page of last resort, asked for by its own address: the page that a failure shows, with nothing in it.
	get('/_global-error', null, 'nothing', all('failed'), { posted: 'page' }),
]

const library = '/api/auth/[...nextauth]'
const closed = (endpoint: string): Row[] => {
	const path = `/api/auth/${endpoint}`
	return [
		get(library, null, 'nothing', all('hidden'), { path }),
		post(library, null, 'nothing', all('hidden'), { path }),
	]
}

/** The sign-in library's own addresses, each by name. It answers HEAD with 400 where it is asked at all. */
const libraryRows: readonly Row[] = [
	get(library, null, 'nothing', all('data'), {
		path: '/api/auth/session',
		head: { ...all('unclear'), 'signed out': 'data' },
	}),
	post(library, null, 'nothing', all('hidden'), { path: '/api/auth/session' }),
	get(library, null, 'nothing', all('data'), { path: '/api/auth/csrf', head: all('unclear') }),
	post(library, null, 'nothing', all('hidden'), { path: '/api/auth/csrf' }),
	get(library, null, 'nothing', all('hidden'), { path: '/api/auth/signout' }),
	post(library, null, 'nothing', all('elsewhere'), { path: '/api/auth/signout' }),
	get(library, null, 'nothing', all('elsewhere'), { path: '/api/auth/callback/email?token=none' }),
	post(library, null, 'nothing', all('elsewhere'), { path: '/api/auth/callback/email?token=none' }),
	...[
		'signin',
		'signin/email',
		'callback',
		'callback/credentials',
		'callback/other',
		'callback/email/more',
		'providers',
		'error',
		'verify-request',
		'_log',
	].flatMap(closed),
]

/** One row for every route and method that the build answers. */
export const rows: readonly Row[] = [
	...clientRows,
	...agreementRows,
	...studioRows,
	...studioAgreementRows,
	...moneyRows,
	...publicRows,
	...libraryRows,
]

export type ActionRow = { readonly name: string; readonly act: Act }

/** One row for every server action: all of them are the designer's alone, hidden from all others who are signed in. */
export const actionRows: readonly ActionRow[] = [
	{ name: 'plan', act: 'plan a season' },
	{ name: 'begin', act: 'change the draft' },
	{ name: 'saveCollectionWords', act: 'change the catalogue' },
	{ name: 'saveDesign', act: 'change the catalogue' },
	{ name: 'saveCollectionExtra', act: 'change the catalogue' },
	{ name: 'applyToClients', act: 'change the draft' },
	{ name: 'startFrom', act: 'change the draft' },
	{ name: 'remind', act: 'remind' },
	{ name: 'remindAll', act: 'remind' },
	{ name: 'takeApproval', act: 'answer by phone' },
	{ name: 'takeChange', act: 'answer by phone' },
	{ name: 'takeSkip', act: 'answer by phone' },
	{ name: 'publish', act: 'publish' },
	{ name: 'steer', act: 'steer the proposal' },
	{ name: 'saveClient', act: 'change clients' },
	{ name: 'invite', act: 'change clients' },
	{ name: 'changeAddress', act: 'change clients' },
	{ name: 'endContact', act: 'change clients' },
	{ name: 'savePlace', act: 'change clients' },
	{ name: 'addColour', act: 'change clients' },
	{ name: 'addColours', act: 'change clients' },
	{ name: 'renameColour', act: 'change clients' },
	{ name: 'mergeColours', act: 'change clients' },
	{ name: 'dropColour', act: 'change clients' },
	{ name: 'saveContainer', act: 'change clients' },
	{ name: 'saveMaterial', act: 'change the catalogue' },
	{ name: 'keepStock', act: 'change the catalogue' },
	{ name: 'saveSupplier', act: 'change the catalogue' },
	{ name: 'saveRecipe', act: 'change the catalogue' },
	{ name: 'saveSettings', act: 'change settings' },
	{ name: 'saveRates', act: 'change settings' },
	{ name: 'hire', act: 'change settings' },
	{ name: 'endStaff', act: 'change settings' },
	...studioAgreementActions,
	...moneyActions,
]

/** What an action says to each; `elsewhere` is the page that it leads on to. */
export const actionSays: Says = { ...nobody, designer: 'elsewhere' }
