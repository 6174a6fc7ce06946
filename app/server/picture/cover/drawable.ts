import type { Cover } from '@/lib/proposal/offer/cover'

/** Drawn as pictures that would have to be fetched (Unicode Technical Standard 51), also where a font has the sign. */
const pictured = /\p{Extended_Pictographic}/u

/** Marks that combine, and signs that steer a line, have no box of their own to be drawn in. */
const written = /[\p{L}\p{N}\p{P}\p{S} ]/u

/** What of a text can be drawn with these letters; without the rest, which the renderer would look for on the network. */
function textOf(text: string, known: ReadonlySet<number>): string {
	return [...text.normalize('NFC')]
		.map((sign) => (/\s/u.test(sign) ? ' ' : sign))
		.filter((sign) => known.has(sign.codePointAt(0) ?? 0) && written.test(sign) && !pictured.test(sign))
		.join('')
		.replace(/ +/g, ' ')
		.replace(/^[^\p{L}\p{N}]+$/u, '')
		.trim()
}

/** A cover in the scripts that the fonts at hand know: an emoji is left out, a name in another script too. */
export function drawable({ season, studio, palettes }: Cover, known: ReadonlySet<number>): Cover {
	return {
		season: textOf(season, known),
		studio: textOf(studio, known),
		palettes: palettes.map(({ name, hexes }) => ({ name: textOf(name, known), hexes })),
	}
}
