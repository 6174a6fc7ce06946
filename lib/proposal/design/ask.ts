import { judge } from '../../colour/palette/judge'
import type { PaletteAsk, SiteColour } from '../../colour/palette/palette'
import { usualInstallMonth } from '../../recipe/almanac/months'
import type { Draft, DraftOption } from '../draft'
import type { Facts } from '../facts'
import { cardsOf } from '../job-of'

/** Month of the install: of the window where there is one. */
export const monthOf = ({ window: { from } }: Pick<Draft, 'window'>, { season }: Pick<Facts, 'season'>): number =>
	from === null ? usualInstallMonth(season.quarter) : Number(from.slice(5, 7))

/** What a palette is made for: the wall and door of the first place of the draft. */
export function askOf(draft: Draft, facts: Facts, site: readonly SiteColour[]): PaletteAsk | undefined {
	const [card] = cardsOf(draft, facts)
	const place = facts.sites.find(({ id }) => id === card?.place)
	if (place === undefined) return undefined
	const materials = [...facts.materials.values()].filter(({ isRetired }) => !isRetired)
	return { site, wall: place.wall, door: place.door, materials, month: monthOf(draft, facts) }
}

/** "Echoes the brass of your door": the worth of an option's palette in sentences. */
export const paletteWords = ({ palette }: DraftOption, ask: PaletteAsk): readonly string[] =>
	palette.length === 0 ? [] : judge(palette, ask).words
