/** Headers that no page may lack, static files included. What differs by request is set in `proxy.ts`. */
const headers = [
	{ key: 'Strict-Transport-Security', value: 'max-age=63072000; includeSubDomains' },
	{ key: 'X-Content-Type-Options', value: 'nosniff' },
	// Not no-referrer: a browser would then send "Origin: null" with a form, which is refused.
	{ key: 'Referrer-Policy', value: 'same-origin' },
	{ key: 'Cross-Origin-Opener-Policy', value: 'same-origin' },
	{ key: 'Cross-Origin-Resource-Policy', value: 'same-origin' },
	{ key: 'Permissions-Policy', value: 'camera=(), geolocation=(), microphone=(), payment=(), usb=()' },
	{ key: 'X-Robots-Tag', value: 'noindex, nofollow' },
]

/** @type {import('next').NextConfig} */
export default {
	poweredByHeader: false,
	agentRules: false,
	reactStrictMode: true,
	// It reads its program for pixels from a file beside it.
	serverExternalPackages: ['@vercel/og', 'fontkit'],
	// No picture goes through the framework's converter, so nobody else's shall.
	images: { unoptimized: true },
	// Types are a check of their own in `npm test`, over tests and stories too; a build looks at the site alone.
	typescript: { ignoreBuildErrors: true },
	// A page that may be seen but not used is told so with a 403, as the rule on refusals asks.
	experimental: {
		authInterrupts: true,
		serverActions: { bodySizeLimit: '64kb' },
		// As much as a form with photos; what else may hold is less, and looked at before it is read (`app/server/edge/screen.ts`).
		proxyClientMaxBodySize: '42mb',
	},
	headers: async () => [
		{ source: '/:path*', headers },
		// It is there to be shown elsewhere; of two that match, the last is sent.
		{ source: '/cover/:picture', headers: [{ key: 'Cross-Origin-Resource-Policy', value: 'cross-origin' }] },
	],
}
