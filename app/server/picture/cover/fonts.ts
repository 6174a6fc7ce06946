import 'server-only'
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { create } from 'fontkit'

/** In the order in which a letter is looked for. */
const files = [
	'bricolage-grotesque/files/bricolage-grotesque-latin-600-normal.woff',
	'bricolage-grotesque/files/bricolage-grotesque-latin-ext-600-normal.woff',
	'bricolage-grotesque/files/bricolage-grotesque-vietnamese-600-normal.woff',
	'noto-sans/files/noto-sans-latin-600-normal.woff',
	'noto-sans/files/noto-sans-greek-600-normal.woff',
	'noto-sans/files/noto-sans-greek-ext-600-normal.woff',
	'noto-sans/files/noto-sans-cyrillic-600-normal.woff',
	'noto-sans/files/noto-sans-cyrillic-ext-600-normal.woff',
]

type Fonts = {
	readonly fonts: { readonly name: string; readonly data: Buffer; readonly weight: 600; readonly style: 'normal' }[]
	/** Code points that one of them can draw. */
	readonly known: ReadonlySet<number>
}

let read: Fonts | undefined

/** The fonts of a cover, from the folder of packages beside which the site is started; read once. */
export function coverFonts(): Fonts {
	if (read !== undefined) return read
	const known = new Set<number>()
	const fonts = files.map((file, at) => {
		const data = readFileSync(join(process.cwd(), 'node_modules/@fontsource', file))
		const font = create(data)
		if ('characterSet' in font) for (const point of font.characterSet) known.add(point)
		return { name: `cover ${at}`, data, weight: 600, style: 'normal' } as const
	})
	read = { fonts, known }
	return read
}
