/** Who an answer is from, as it is sealed with it; `said` gave it on the phone where the studio took it down. */
export type Answerer = { readonly name: string; readonly said?: string | undefined }

/** After "approved": "by Maud Marrowby", or "by phone, as Maud Marrowby said, taken down by Isolde Fenwick". */
export function answeredBy(word: 'client' | 'studio', words: Answerer | undefined): string {
	if (word === 'client') return `by ${words?.name ?? 'a contact'}`
	const said = words?.said ? `, as ${words.said} said` : ''
	return `by phone${said}, taken down by ${words?.name ?? 'the studio'}`
}
