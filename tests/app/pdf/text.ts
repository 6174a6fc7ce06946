import { getDocument, VerbosityLevel } from 'pdfjs-dist/legacy/build/pdf.mjs'

/** Points from the foot of a page: below it stands what every page repeats. */
const foot = 60

/** The words of each page, as pdf.js reads them out of a file; without the line at the foot. */
export async function pagesOf(bytes: Uint8Array, { withFoot = false } = {}): Promise<string[]> {
	const task = getDocument({ data: new Uint8Array(bytes), verbosity: VerbosityLevel.ERRORS })
	const pdf = await task.promise
	const pages: string[] = []
	for (let n = 1; n <= pdf.numPages; n += 1) {
		const { items } = await (await pdf.getPage(n)).getTextContent()
		const words = items.flatMap((item) =>
			'str' in item && (withFoot || item.transform[5] > foot) ? [`${item.str}${item.hasEOL ? '\n' : ''}`] : [],
		)
		pages.push(words.join(''))
	}
	await task.destroy()
	return pages
}

/** Without spaces and ends of lines: where a line ends is the file's business. */
export const bare = (text: string): string => text.replaceAll(/\s/g, '')
