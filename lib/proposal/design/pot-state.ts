import { lost } from '../../colour/lost'
import { judge } from '../../colour/palette/judge'
import type { PaletteAsk, SiteColour } from '../../colour/palette/palette'
import { mixWhere, weigh } from '../../container/weight'
import { weight } from '../../format/weight'
import { usualInstallMonth } from '../../recipe/almanac/months'
import { all } from '../../recipe/check/all'
import { overruled } from '../../recipe/check/finding'
import { type Setting, usualCircuit } from '../../recipe/check/setting'
import { contentsKg, type Planned, planned } from '../../recipe/planned'
import { summary } from '../../recipe/summary'
import type { Draft, DraftLine, DraftOption } from '../draft'
import type { Card, Facts, Site } from '../facts'
import { cardsOf } from '../job-of'
import type { PotState } from './told'

/** Month of the install: of the window where there is one. */
export const monthOf = ({ window: { from } }: Pick<Draft, 'window'>, { season }: Pick<Facts, 'season'>): number =>
	from === null ? usualInstallMonth(season.quarter) : Number(from.slice(5, 7))

const daysBetween = (from: string, to: string) => Math.round((Date.parse(to) - Date.parse(from)) / 86_400_000)

/** Lights hang until the season is taken down, or until the next season's three months begin. */
function daysHung({ window: { to } }: Draft, { season: { quarter, year } }: Facts): number | null {
	if (to === null) return null
	const ends = {
		spring: `${year}-06-01`,
		summer: `${year}-09-01`,
		autumn: `${year}-12-01`,
		winter: `${year + 1}-03-01`,
	}
	return Math.max(0, daysBetween(to, ends[quarter]))
}

function settingOf(card: Card, place: Site, draft: Draft, facts: Facts): Setting {
	return {
		pot: card,
		quarter: facts.season.quarter,
		month: monthOf(draft, facts),
		zone: place.zone,
		circuit: usualCircuit,
		daysHung: daysHung(draft, facts),
		lengths: facts.studio.lengths,
	}
}

const plainLines = (lines: readonly DraftLine[]) =>
	lines.map(({ material, role, count }) => ({ material, role, count: count.value }))

function weighs(card: Card, lines: readonly Planned[], facts: Facts): string {
	const { wetKg, isEstimated } = weigh(
		card,
		{ wall: card.wall, vesselKg: card.vesselKg, mix: mixWhere(card.limitedWeight) },
		contentsKg(lines),
	)
	return `${isEstimated ? 'About ' : ''}${weight(wetKg, facts.studio.lengths)} when wet`
}

/** Every pot of an option with what the checks find in it; what the designer lets stand is apart. */
export function potStates(option: DraftOption, draft: Draft, facts: Facts): PotState[] {
	return cardsOf(draft, facts).flatMap((card) => {
		const place = facts.sites.find(({ id }) => id === card.place)
		if (place === undefined) return []
		const pot = option.pots.find(({ container }) => container === card.id)
		const lines = planned(plainLines(pot?.lines ?? []), facts.materials)
		const found = all(lines, settingOf(card, place, draft, facts), lost(lines, place))
		const notes = draft.overruled.filter((each) => each.option === option.key && each.container === card.id)
		const judged = overruled(found, new Map(notes.map(({ check, note }) => [check, note])))
		return [{ container: card.id, says: summary(lines).says, weighs: weighs(card, lines, facts), ...judged }]
	})
}

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
