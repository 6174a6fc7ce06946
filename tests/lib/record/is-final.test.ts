import { describe, expect, test } from 'vitest'

import { isFinal } from '@/lib/record/is-final'

// Replies by RFC 5321, section 4.2.3; the login by RFC 4954, section 6.
describe('a mail that was not taken', () => {
	test.each([
		{ name: 'no such mailbox', code: 'EENVELOPE', responseCode: 550, command: 'RCPT TO', final: true },
		{ name: 'the mailbox moved', code: 'EENVELOPE', responseCode: 551, command: 'RCPT TO', final: true },
		{ name: 'the content is refused', code: 'EMESSAGE', responseCode: 554, command: 'DATA', final: true },
		{ name: 'the mailbox is busy', code: 'EENVELOPE', responseCode: 450, command: 'RCPT TO', final: false },
		{ name: 'the disk is full', code: 'EMESSAGE', responseCode: 452, command: 'DATA', final: false },
		{ name: 'our password is wrong', code: 'EAUTH', responseCode: 535, command: 'AUTH PLAIN', final: false },
		{ name: 'our own address is refused', code: 'EENVELOPE', responseCode: 553, command: 'MAIL FROM', final: false },
		{ name: 'the server closes', code: 'ECONNECTION', responseCode: 421, command: 'CONN', final: false },
		{ name: 'nobody answers', code: 'ESOCKET', responseCode: null, command: 'CONN', final: false },
		{ name: 'it never left', code: null, responseCode: null, command: null, final: false },
	])('$name: given up at once: $final', ({ name: _, final, ...failure }) => {
		expect(isFinal(failure, 1)).toBe(final)
	})

	test('is given up after three days of tries', () => {
		const down = { code: 'ESOCKET', responseCode: null, command: 'CONN' }
		expect([isFinal(down, 79), isFinal(down, 80)]).toEqual([false, true])
		const waits = Array.from({ length: 79 }, (_, n) => Math.min(3600, 15 * 2 ** (n + 1)))
		expect(waits.reduce((all, each) => all + each, 0) / 86_400).toBeCloseTo(3, 0)
	})
})
