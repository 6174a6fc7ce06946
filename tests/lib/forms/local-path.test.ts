import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { localPath } from '@/lib/forms/local-path'
import { anyText } from '../units/arbitrary'

describe('a path of this site', () => {
	test.each([
		'/',
		'/home',
		'/proposal/0190e6b2-7c41-7d10-9a55-3f2b6c8d9e07',
		'/proposal/7?option=b&extra=wreath&without=c1',
		'/studio/season/3',
		'/a/../b',
		'/%2f%2fevil.example',
		'/%5cevil.example',
		'/home?to=%2F%2Fevil.example',
	])('%s is kept', (path) => {
		expect(localPath(path)).toBe(path)
	})

	// CWE-601, open redirect: the ways in which a browser reads an address as one of another site (WHATWG URL, section 4.4).
	test.each([
		{ name: 'another scheme', text: 'https://evil.example' },
		{ name: 'a scheme without slashes', text: 'https:evil.example' },
		{ name: 'a script', text: 'javascript:alert(1)' },
		{ name: 'two slashes', text: '//evil.example' },
		{ name: 'three', text: '///evil.example' },
		{ name: 'a slash and a backslash', text: '/\\evil.example' },
		{ name: 'two backslashes', text: '\\\\evil.example' },
		{ name: 'a backslash and a slash', text: '\\/evil.example' },
		{ name: 'a tab between the slashes', text: '/\t/evil.example' },
		{ name: 'a line end between them', text: '/\n/evil.example' },
		{ name: 'a carriage return between them', text: '/\r/evil.example' },
		{ name: 'a NUL between them', text: '/\u0000/evil.example' },
		{ name: 'a space before them', text: ' //evil.example' },
		{ name: 'a tab before them', text: '\t//evil.example' },
		{ name: 'a line end behind', text: '/home\n' },
		{ name: 'a header behind', text: '/home\r\nSet-Cookie: a=b' },
		{ name: 'a backslash further on', text: '/home\\..\\x' },
		{ name: 'a user before the host', text: '/@evil.example' },
		{ name: 'a colon', text: '/x:y' },
		{ name: 'a fragment', text: '/home#//evil.example' },
		{ name: 'slashes of full width', text: '／／evil.example' },
		{ name: 'a letter beyond ASCII', text: '/höme' },
		{ name: 'no slash in front', text: 'home' },
		{ name: 'a dot in front', text: './home' },
		{ name: 'a query alone', text: '?to=/home' },
		{ name: 'a coded slash in front', text: '%2f%2fevil.example' },
		{ name: 'too long', text: `/${'a'.repeat(301)}` },
		{ name: 'nothing', text: '' },
		{ name: 'null', text: null },
		{ name: 'undefined', text: undefined },
	])('$name leads to the start', ({ text }) => {
		expect(localPath(text)).toBe('/')
	})

	test('never leaves the site, as the URL parser of a browser reads it', () => {
		const part = fc.oneof(
			fc.constantFrom(
				'/',
				'//',
				'\\',
				'/\\',
				':',
				'@',
				'?',
				'#',
				'.',
				'..',
				'%2f',
				'%5c',
				'\t',
				'\n',
				'\r',
				' ',
				'https:',
			),
			fc.constantFrom('evil.example', 'javascript:', 'home', 'a', '0', '~', '-', '_', '&', '='),
			anyText(3),
		)
		const texts = fc.array(part, { maxLength: 9 }).map((parts) => parts.join(''))
		const slashed = texts.map((text) => `/${text}`)
		const site = 'https://doorsill.example'
		fc.assert(
			fc.property(fc.oneof(texts, slashed), (text) => {
				const path = localPath(text)
				const url = new URL(path, `${site}/deep/down`)
				expect(url.origin).toBe(site)
				expect(path).toMatch(/^\/[\x21-\x7e]*$/)
				expect([text, '/']).toContain(path)
			}),
			{ numRuns: 800 },
		)
	})
})
