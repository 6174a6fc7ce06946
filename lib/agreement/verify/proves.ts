/** What a sealed file and its record show, and what they do not: the same words in the file and on the page that compares. */
export const proves = [
	'The file was sealed with the studio’s own key. A PDF reader that finds the seal whole shows that no byte was changed since, and that the file comes from whoever holds that key.',
	'Whoever signed on a screen could read mail that is sent to the address named: a link or a code from there was used.',
	'The head ties the signing to the studio’s record, a chain in which each line holds the hash of the one before. A record that was rewritten up to that line gives another head.',
] as const

export const provesNot = [
	'It does not prove who sat before the screen. Control of a mailbox is no identity, and neither are a network address or the name of a browser.',
	'The key’s certificate is the studio’s own. Nobody else vouches for it, so a PDF reader calls its holder unknown. The times are those of the studio’s clock; no third party stamped them.',
	'What a court makes of it is for a lawyer to say.',
] as const
