import { type Answer, inParallel, type Sending } from './send'

export type Read = { readonly path: string; readonly how: 'page' | 'parts'; readonly answer: Answer }

const attribute = /\s(?:href|src|action)="(\/[^"#]*)/g

function linksIn({ headers, body }: Answer): string[] {
	const { location } = headers
	if (location !== undefined) return location.startsWith('/') ? [location] : []
	if (!(headers['content-type'] ?? '').startsWith('text/html')) return []
	const plain = body.replace(/<script[^>]*>.*?<\/script>/gs, (script) => script.replace(/>.*/s, '>'))
	return [...plain.matchAll(attribute)].flatMap(([, path]) => (path === undefined ? [] : path.replaceAll('&amp;', '&')))
}

/** The address of a page's parts, as the framework's own links ask for them. */
export const asParts = (path: string): string => `${path}${path.includes('?') ? '&' : '?'}_rsc`
const isFile = (path: string) => path.startsWith('/_next/')

/** An address without what it is about: the same page of another thing has the same shape. */
const shapeOf = (path: string) => path.replace(/[0-9a-f]{8}(?:-[0-9a-f]{4,12}){4}/g, 'ID').replace(/=[^&]*/g, '=')

/** Takes at most `most` addresses of a shape. */
function fewOfEach(most: number): (path: string) => boolean {
	const taken = new Map<string, number>()
	return (path) => {
		const shape = shapeOf(path)
		const before = taken.get(shape) ?? 0
		taken.set(shape, before + 1)
		return before < most
	}
}

/** What a browser sends when somebody opens a page: it counts as seen. */
const document = { 'sec-fetch-dest': 'document' }

/**
 * Everything that whoever asks comes to from `starts` by following what the pages name: each page as a document, then as its parts.
 * Forms are looked at and not sent. `ofEach` bounds how many addresses of one shape are followed.
 */
export async function crawl(
	ask: (path: string, sending: Sending) => Promise<Answer>,
	starts: readonly string[],
	{ ofEach = Number.POSITIVE_INFINITY, files = false } = {},
): Promise<Read[]> {
	const seen = new Set(starts)
	const reads: Read[] = []
	const isWanted = fewOfEach(ofEach)
	let round = [...seen]
	while (round.length > 0) {
		const found: string[] = []
		await inParallel(round, 6, async (path) => {
			const answer = await ask(path, { headers: document })
			reads.push({ path, how: 'page', answer })
			found.push(...linksIn(answer))
			if (!isFile(path) && (answer.headers['content-type'] ?? '').startsWith('text/html'))
				reads.push({ path, how: 'parts', answer: await ask(asParts(path), { headers: { rsc: '1' } }) })
		})
		round = [...new Set(found)]
			.toSorted()
			.filter((path) => !seen.has(path) && (files || !isFile(path)) && isWanted(path))
		for (const path of round) seen.add(path)
	}
	return reads.toSorted((a, b) => (a.path < b.path ? -1 : 1))
}
