/** Well-formed UTF-16 without control characters (tab and line ends apart) and without marks that turn the reading order about. */
export function isClean(text: string): boolean {
	return (
		text.isWellFormed() && !/[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f-\u009f\u202a-\u202e\u2066-\u2069]/.test(text)
	)
}

/** Text as it is stored and hashed: line ends as line feeds, NFC (Unicode Standard Annex 15). */
export function normal(text: string): string {
	return text.replace(/\r\n?|[\u2028\u2029]/g, '\n').normalize('NFC')
}
