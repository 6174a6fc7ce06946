import { reportPath } from './screen'

const isDev = process.env.NODE_ENV === 'development'

/** The content security policy of a page: scripts and styles by nonce or from here, nothing from elsewhere. */
export function policy(nonce: string): string {
	return [
		"default-src 'none'",
		`script-src 'nonce-${nonce}' 'strict-dynamic'${isDev ? " 'unsafe-eval'" : ''}`,
		`style-src 'self' ${isDev ? "'unsafe-inline'" : `'nonce-${nonce}'`}`,
		"img-src 'self' data:",
		"font-src 'self'",
		"connect-src 'self'",
		"manifest-src 'self'",
		"form-action 'self'",
		"base-uri 'none'",
		"object-src 'none'",
		"frame-ancestors 'none'",
		`report-uri ${reportPath}`,
	].join('; ')
}

const pictures =
	'cover/[^/]+|photo/[^/]+/[^/]+|proposal/[^/]+/picture/[^/]+|studio/(?:proposal/[^/]+/preview|recipes/[^/]+)/picture|demo/mail/[^/]+'
const papers = '(?:agreement|invoice|proposal)/[^/]+/pdf|home/[^/]+/account/pdf|studio/money/[^/]+/pdf'
const files = new RegExp(`^/(?:${pictures}|${papers})$`)

/** Whether the handler at this address says itself what may be loaded: a picture or a file nothing, its refusal as any page. */
export const hasPolicyOfItsOwn = (path: string): boolean => files.test(path)
