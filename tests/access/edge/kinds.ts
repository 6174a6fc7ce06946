import { formOf } from '../ask/bodies'
import { actionNamed } from '../ask/build'
import { called, json, multipart, posted, urlencoded } from '../ask/forms'
import type { Sending } from '../ask/send'
import { open } from '../site/here'
import type { OpenSite } from '../site/open'
import { draft, things } from './bakery'

type Kind = readonly [
	what: string,
	answer: () => ReturnType<OpenSite['ask']>,
	status: number,
	policy: 'policy' | 'none',
	kept?: RegExp,
]
type Who = Parameters<OpenSite['ask']>[0]

const get =
	(person: Who, path: () => string, more: Sending = {}) =>
	() =>
		open.ask(person, path(), more)
const post = (person: Who, path: () => string, body: () => Sending) => () =>
	open.ask(person, path(), { method: 'POST', ...body() })

const action = () => called(actionNamed('plan').id, formOf('plan', things))
const form = () => urlencoded([['x', '1']])
const asset = async () => {
	const { body } = await open.ask('signed out', '/sign-in')
	return /href="(\/_next\/static\/[^"]+\.css)"/.exec(body)?.[1] ?? ''
}
const proposal = () => `/proposal/${things.proposal}`
const never = /no-store/

/** Every kind of answer: who is told what, whether the policy stands in its head, and how long it may be kept. */
export const kinds: readonly Kind[] = [
	['a client’s page', get('approver', proposal), 200, 'policy', never],
	['its parts', get('approver', () => `${proposal()}?_rsc`, { headers: { rsc: '1' } }), 200, 'policy', never],
	['a client’s file', get('approver', () => `/agreement/${things.agreement}/pdf`), 200, 'none', never],
	['a file that is forbidden', get('looker', () => `/agreement/${things.agreement}/pdf`), 403, 'policy', never],
	['an invoice as a file', get('approver', () => `/invoice/${things.invoice}/pdf`), 200, 'none', never],
	['an invoice that is forbidden', get('looker', () => `/invoice/${things.invoice}/pdf`), 403, 'policy', never],
	['a statement as a file', get('approver', () => `/home/${things.client}/account/pdf`), 200, 'none', never],
	['the studio’s own', get('designer', () => `/studio/money/${things.client}/pdf`), 200, 'none', never],
	['an approved design as a file', get('approver', () => `/proposal/${things.answered}/pdf`), 200, 'none', never],
	['a page of the studio', get('designer', () => '/studio/materials'), 200, 'policy', never],
	['a public page', get('signed out', () => '/sign-in'), 200, 'policy', never],
	['a page that leads on', get('approver', () => '/home'), 307, 'policy', never],
	['a page that is hidden', get('other approver', proposal), 404, 'policy', never],
	['a page that is forbidden', get('looker', () => `${proposal()}/approve`), 403, 'policy', never],
	['a page that is not there', get('signed out', () => '/nothing/at/all'), 404, 'policy', never],
	['an address that is no text', get('signed out', () => '/proposal/%E0%A4%A'), 400, 'policy', never],
	['an address beside the icon', get('signed out', () => '/icon.svgx'), 404, 'policy', never],
	['a handler that leads on', post('signed out', () => '/sign-in/code', form), 303, 'policy', never],
	['a handler that hides', post('helper', () => `${proposal()}/answer/skip`, form), 404, 'policy', never],
	['a handler that forbids', post('looker', () => `${proposal()}/answer/skip`, form), 403, 'policy', never],
	[
		'a price',
		post(
			'designer',
			() => `/studio${proposal()}/price`,
			() => json({ draft }),
		),
		200,
		'policy',
		never,
	],
	[
		'a draft with errors',
		post(
			'designer',
			() => `/studio${proposal()}/price`,
			() => json({}),
		),
		422,
		'policy',
		never,
	],
	['a session', get('approver', () => '/api/auth/session'), 200, 'policy', never],
	['a token against forgery', get('signed out', () => '/api/auth/csrf'), 200, 'policy', never],
	['an address of the library that is shut', get('signed out', () => '/api/auth/signin'), 404, 'policy', never],
	['an action that leads to sign-in', post('signed out', () => '/studio', action), 200, 'policy', never],
	['an action that is hidden', post('approver', () => '/studio', action), 404, 'policy', never],
	[
		'an action without scripts',
		post(
			'signed out',
			() => '/studio',
			() => posted(actionNamed('plan').id, []),
		),
		303,
		'policy',
		never,
	],
	[
		'an action that the build has not',
		post(
			'designer',
			() => '/studio',
			() => called('00'.repeat(21), []),
		),
		409,
		'policy',
	],
	[
		'a form for no action',
		post(
			'designer',
			() => '/studio',
			() => multipart([['a', 'b']]),
		),
		400,
		'policy',
	],
	[
		'a report',
		post(
			'signed out',
			() => '/csp-report',
			() => ({ ...json({}), headers: { 'content-type': 'application/csp-report' } }),
		),
		204,
		'policy',
	],
	[
		'a foreign origin',
		post(
			'designer',
			() => '/sign-out',
			() => ({ ...form(), headers: { origin: 'null' } }),
		),
		403,
		'policy',
		never,
	],
	['a method that is none of ours', get('designer', () => '/studio', { method: 'PUT' }), 405, 'policy', never],
	['a handler without anything to show', get('designer', () => '/sign-out'), 405, 'policy'],
	[
		'a tint',
		get('signed out', () => '/tint/5f7488-b5653a.css'),
		200,
		'policy',
		/^public, max-age=31536000, immutable$/,
	],
	['no tint', get('signed out', () => '/tint/x.css'), 404, 'policy'],
	['the icon', get('signed out', () => '/icon.svg'), 200, 'none', /^public/],
	['a file of the build', async () => open.ask('signed out', await asset()), 200, 'none', /immutable/],
	['no file of the build', get('signed out', () => '/_next/static/none.js'), 404, 'none'],
	[
		'a picture for the framework’s converter',
		get('designer', () => '/_next/image?url=%2Fstudio&w=64&q=75'),
		404,
		'policy',
		never,
	],
]
