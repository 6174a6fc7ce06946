import type { Said } from '../table/rows'
import type { Answer } from './send'

const plain: Readonly<Record<number, Said>> = {
	204: 'noted',
	400: 'unclear',
	401: 'signed out',
	403: 'forbidden',
	404: 'hidden',
	405: 'no method',
	500: 'failed',
}

const isSignIn = (place: string) => /^\/sign-in(?:[?;]|$)/.test(place.replace(/^http:\/\/127\.0\.0\.1:\d+/, ''))
const led = (place: string): Said => (isSignIn(place) ? 'sign-in' : 'elsewhere')

function ofType(type: string): Said {
	if (type.startsWith('text/html')) return 'page'
	return type.startsWith('application/json') ? 'data' : 'file'
}

/** Where it leads on to; nothing where it does not. */
export const placeOf = ({ headers }: Answer): string => String(headers.location ?? '')

/** What the site said, by status, place and type; the status itself where it has no name here. */
export function outcomeOf({ status, headers }: Answer): Said | `status ${number}` {
	if (status === 200) return ofType(headers['content-type'] ?? '')
	if (status >= 300 && status < 400) return led(headers.location ?? '')
	return plain[status] ?? `status ${status}`
}

/** Of a server action that was called with scripts: the place that it leads to stands in a header of its own. */
export function outcomeOfCall(answer: Answer): Said | `status ${number}` {
	const place = answer.headers['x-action-redirect']
	return typeof place === 'string' ? led(place) : outcomeOf(answer)
}

/** Of a page asked for as its parts: a refusal or a redirect stands in them under a 200. */
export function outcomeOfParts(answer: Answer): Said | `status ${number}` {
	if (answer.status !== 200) return outcomeOf(answer)
	const refused = /NEXT_HTTP_ERROR_FALLBACK;(\d+)/.exec(answer.body)?.[1]
	if (refused !== undefined) return plain[Number(refused)] ?? 'unclear'
	const place = /NEXT_REDIRECT;\w+;([^;"]+);/.exec(answer.body)?.[1]
	return place === undefined ? 'page' : led(place)
}
