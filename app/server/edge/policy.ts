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
	/^\/(?:photo\/|proposal\/[^/]+\/picture\/|studio\/(?:proposal\/[^/]+\/preview|recipes\/[^/]+)\/picture$|demo\/mail\/.)/

/** A picture may load nothing at all, whoever opens it by itself; everything else is a page. */
export const policyAt = (path: string, nonce: string): string =>
	pictures.test(path) ? "default-src 'none'" : policy(nonce)
