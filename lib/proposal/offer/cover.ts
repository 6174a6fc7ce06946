import { type Season, seasonName } from '../../season/season'
import type { Hex } from '../../units/hex'
import type { Offer } from './offer'

/** What a link shows of a design to whoever holds the link: no person, no place, no price. */
export type Cover = {
	readonly season: string
	readonly studio: string
	readonly palettes: readonly { readonly name: string; readonly hexes: readonly Hex[] }[]
}

const named = (season: Season): string => {
	const name = seasonName(season)
	return `${name.charAt(0).toUpperCase()}${name.slice(1)}`
}

export const coverOf = ({ season, studio, options }: Pick<Offer, 'season' | 'studio' | 'options'>): Cover => ({
	season: named(season),
	studio,
	palettes: options.map(({ name, palette }) => ({ name, hexes: palette.map(({ hex }) => hex) })),
})

/** The same in words, for whoever does not see it. */
export function describeCover({ season, studio, palettes }: Cover): string {
	return [season, palettes.map(({ name }) => name).join(', '), studio].filter((part) => part !== '').join('. ')
}
