import { lost } from '../../colour/lost'
import { mixWhere, weigh } from '../../container/weight'
import { weight } from '../../format/weight'
import { seasonEnd } from '../../recipe/almanac/months'
import { all } from '../../recipe/check/all'
import { overruled } from '../../recipe/check/finding'
import { type Setting, usualCircuit } from '../../recipe/check/setting'
import { contentsKg, type Planned } from '../../recipe/planned'
import { summary } from '../../recipe/summary'
import { daysBetween } from '../../units/day'
import type { Draft, DraftOption } from '../draft'
import type { Card, Facts, Site } from '../facts'
import { cardsOf } from '../job-of'
import { aloneIn } from './around/alone'
import { type Around, nothingAround } from './around/around'
import { repeated } from './around/repeated'
import { monthOf } from './ask'
import { plannedIn } from './planned-in'
import type { PotState } from './told'

/** Lights hang until the next season's three months begin. */
function daysHung({ window: { to } }: Draft, { season }: Facts): number | null {
	return to === null ? null : Math.max(0, daysBetween(to, seasonEnd(season)))
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

function weighs(card: Card, lines: readonly Planned[], facts: Facts): string {
	const { wetKg, isEstimated } = weigh(
		card,
		{ wall: card.wall, vesselKg: card.vesselKg, mix: mixWhere(card.limitedWeight) },
		contentsKg(lines),
	)
	return `${isEstimated ? 'About ' : ''}${weight(wetKg, facts.studio.lengths)} when wet`
}

/** Every pot of an option with what the checks find in it; what the designer lets stand is apart. */
export function potStates(option: DraftOption, draft: Draft, facts: Facts, around: Around = nothingAround): PotState[] {
	const cards = cardsOf(draft, facts)
	const bought = aloneIn(option, cards, facts.materials)
	const again = repeated(option, cards, around)
	return cards.flatMap((card) => {
		const place = facts.sites.find(({ id }) => id === card.place)
		if (place === undefined) return []
		const lines = plannedIn(option, card, facts)
		const others = [...lost(lines, place), ...(again.get(card.id) ?? []), ...(bought.get(card.id) ?? [])]
		const found = all(lines, settingOf(card, place, draft, facts), others)
		const notes = draft.overruled.filter((each) => each.option === option.key && each.container === card.id)
		const judged = overruled(found, new Map(notes.map(({ check, note }) => [check, note])))
		return [{ container: card.id, says: summary(lines).says, weighs: weighs(card, lines, facts), ...judged }]
	})
}
