import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { browserWords } from '@/lib/format/browser'

// Strings as browsers of 2025 send them, written down from memory; the shape is RFC 9110, section 10.1.5.
const cases = [
	['Firefox on Android', 'Mozilla/5.0 (Android 14; Mobile; rv:133.0) Gecko/133.0 Firefox/133.0'],
	['Firefox on Windows', 'Mozilla/5.0 (Windows NT 10.0; Win64; x64; rv:133.0) Gecko/20100101 Firefox/133.0'],
	['Firefox on Linux', 'Mozilla/5.0 (X11; Linux x86_64; rv:133.0) Gecko/20100101 Firefox/133.0'],
	[
		'Firefox on an iPhone',
		'Mozilla/5.0 (iPhone; CPU iPhone OS 17_5 like Mac OS X) AppleWebKit/605.1.15 (KHTML, like Gecko) FxiOS/133.0 Mobile/15E148 Safari/605.1.15',
	],
	[
		'Safari on an iPhone',
		'Mozilla/5.0 (iPhone; CPU iPhone OS 17_5 like Mac OS X) AppleWebKit/605.1.15 (KHTML, like Gecko) Version/17.5 Mobile/15E148 Safari/604.1',
	],
	[
		'Chrome on an iPad',
		'Mozilla/5.0 (iPad; CPU OS 17_5 like Mac OS X) AppleWebKit/605.1.15 (KHTML, like Gecko) CriOS/131.0.0.0 Mobile/15E148 Safari/604.1',
	],
	[
		'Safari on a Mac',
		'Mozilla/5.0 (Macintosh; Intel Mac OS X 10_15_7) AppleWebKit/605.1.15 (KHTML, like Gecko) Version/17.5 Safari/605.1.15',
	],
	[
		'Chrome on Android',
		'Mozilla/5.0 (Linux; Android 10; K) AppleWebKit/537.36 (KHTML, like Gecko) Chrome/131.0.0.0 Mobile Safari/537.36',
	],
	[
		'Samsung Internet on Android',
		'Mozilla/5.0 (Linux; Android 10; K) AppleWebKit/537.36 (KHTML, like Gecko) SamsungBrowser/27.0 Chrome/125.0.0.0 Mobile Safari/537.36',
	],
	[
		'Edge on Windows',
		'Mozilla/5.0 (Windows NT 10.0; Win64; x64) AppleWebKit/537.36 (KHTML, like Gecko) Chrome/131.0.0.0 Safari/537.36 Edg/131.0.0.0',
	],
	[
		'Opera on a Mac',
		'Mozilla/5.0 (Macintosh; Intel Mac OS X 10_15_7) AppleWebKit/537.36 (KHTML, like Gecko) Chrome/130.0.0.0 Safari/537.36 OPR/115.0.0.0',
	],
	[
		'Chrome on a Chromebook',
		'Mozilla/5.0 (X11; CrOS x86_64 14541.0.0) AppleWebKit/537.36 (KHTML, like Gecko) Chrome/131.0.0.0 Safari/537.36',
	],
	['a browser on Linux', 'Something/1.0 (Linux)'],
	['a browser', ''],
	['a browser', 'curl-like/8.0'],
	['a browser', `${'x'.repeat(500)} Firefox/133.0`],
] as const

describe('what a person would call a browser', () => {
	test.each(cases)('%s', (words, userAgent) => {
		expect(browserWords(userAgent)).toBe(words)
	})

	test('is never longer than a line, nor in the browser’s own words', () => {
		fc.assert(
			fc.property(fc.string({ maxLength: 900 }), (text) => {
				const words = browserWords(`${text} <b>`)
				expect(words).toMatch(/^[A-Za-z ]{7,40}$/)
			}),
		)
	})
})
