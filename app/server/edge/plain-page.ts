import { policy } from './policy'
import type { Refused } from './screen'

const entities = (text: string) =>
	text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;').replaceAll('"', '&quot;')

const style =
	'body{font:1.125rem/1.5 system-ui,sans-serif;max-width:34rem;margin:18vh auto 0;padding:0 1.25rem;color:#14241d;background:#f6faf7}h1{font-size:1.75rem;line-height:1.2}a{color:inherit}@media(prefers-color-scheme:dark){body{color:#e6eee9;background:#101714}}'

type Said = Pick<Refused, 'says' | 'retryAfter'> & { readonly status: number; readonly title?: string }

/** A whole page without the rest of the site, for what is turned away before a page could be made. */
export function plainPage(
	{ status, says, title = 'That did not go through', retryAfter }: Said,
	nonce: string,
): Response {
	const body = `<!doctype html><html lang="en"><head><meta charset="utf-8"><meta name="viewport" content="width=device-width"><title>${entities(title)}</title><style nonce="${nonce}">${style}</style></head><body><main><h1>${entities(title)}</h1><p>${entities(says)}</p><p><a href="/">To the start</a></p></main></body></html>`
	return new Response(body, {
		status,
		headers: {
			'content-type': 'text/html; charset=utf-8',
			'cache-control': 'private, no-store',
			'content-security-policy': policy(nonce),
			...(retryAfter !== undefined && { 'retry-after': String(retryAfter) }),
		},
	})
}
