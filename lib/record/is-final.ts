/** How a mail was not taken, without what the server said: that may name an address. */
export type Failure = {
	readonly code: string | null
	/** The reply of the server (RFC 5321, section 4.2); null when there was none. */
	readonly responseCode: number | null
	/** To which command it replied. */
	readonly command: string | null
}

/** Half a minute, twice that, and so on to an hour: about three days of tries, by common practice (no published source). */
const mostTries = 80

/**
 * True when a mail is not to be tried again: a permanent negative reply (5yz: RFC 5321, section 4.2.1) to its recipient
 * or to itself, or too many tries. A login or a sender that is refused is the studio's to mend, and the mail waits.
 */
export function isFinal({ responseCode, command }: Failure, tries: number): boolean {
	const isPermanent = responseCode !== null && responseCode >= 500 && responseCode <= 599
	return tries >= mostTries || (isPermanent && (command === 'RCPT TO' || command === 'DATA'))
}
