import { type copyOf, studio } from './folders'

type Bad = {
	readonly what: string
	readonly of: Parameters<typeof copyOf>[0]
	readonly env: Readonly<Record<string, string>>
	readonly says: RegExp
}

/** Settings that a studio should not start with, and what is said about them. */
export const bad: readonly Bad[] = [
	{
		what: 'http to others',
		of: 'studio',
		env: { SITE_URL: 'http://studio.example' },
		says: /SITE_URL has to begin with https:/,
	},
	{
		what: 'http to a name like loopback',
		of: 'studio',
		env: { SITE_URL: 'http://127.0.0.1.studio.example' },
		says: /SITE_URL has to begin with https:/,
	},
	{
		what: 'an address with a path',
		of: 'studio',
		env: { SITE_URL: `${studio}/door` },
		says: /SITE_URL is not an origin/,
	},
	{ what: 'an address with a slash', of: 'studio', env: { SITE_URL: `${studio}/` }, says: /SITE_URL is not an origin/ },
	{ what: 'no address', of: 'studio', env: { SITE_URL: 'studio' }, says: /SITE_URL is not an origin/ },
	{
		what: 'another scheme',
		of: 'studio',
		env: { SITE_URL: 'ftp://studio.example' },
		says: /SITE_URL (?:is not an origin|has to begin with https:)/,
	},
	{
		what: 'a mail server that is none',
		of: 'studio',
		env: { SITE_URL: studio, SMTP_URL: 'mail.example:465' },
		says: /SMTP_URL is not an address/,
	},
	{
		what: 'a mail server over the web',
		of: 'studio',
		env: { SITE_URL: studio, SMTP_URL: 'https://mail.example' },
		says: /SMTP_URL is not an address/,
	},
	{
		what: 'a sender that is none',
		of: 'studio',
		env: { SITE_URL: studio, MAIL_FROM: 'studio' },
		says: /MAIL_FROM is not a mail address/,
	},
	{ what: 'proxies below none', of: 'studio', env: { SITE_URL: studio, TRUSTED_HOPS: '-1' }, says: /TRUSTED_HOPS / },
	{ what: 'a demo that is none', of: 'studio', env: { DEMO: '1' }, says: /DEMO is set, but .* holds no demo/ },
	{ what: 'a demo in an empty folder', of: 'empty', env: { DEMO: '1' }, says: /DEMO is set, but .* holds no demo/ },
	{ what: 'a demo taken for a studio', of: 'demo', env: { SITE_URL: studio }, says: /holds a demo\. Set DATA_DIR/ },
	{
		what: 'a demo shown to others',
		of: 'demo',
		env: { DEMO: '1', SITE_URL: studio },
		says: /DEMO is for this machine alone/,
	},
	{ what: 'a demo that is half said', of: 'demo', env: { DEMO: 'yes' }, says: /DEMO / },
	{
		what: 'a key that others can read',
		of: 'open key',
		env: { SITE_URL: studio },
		says: /can be read by others: chmod 600/,
	},
	{
		what: 'a clock put forward',
		of: 'studio',
		env: { SITE_URL: studio, CLOCK_OFFSET_MS: '60000' },
		says: /CLOCK_OFFSET_MS is for a demo alone/,
	},
	{
		what: 'a clock in words',
		of: 'studio',
		env: { SITE_URL: studio, CLOCK_OFFSET_MS: 'later' },
		says: /CLOCK_OFFSET_MS /,
	},
]
