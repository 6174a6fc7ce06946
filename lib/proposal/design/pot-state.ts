import { lost } from '../../colour/lost'
import { mixWhere, weigh } from '../../container/weight'
import { weight } from '../../format/weight'
import { seasonEnd } from '../../recipe/almanac/months'
import { all } from '../../recipe/check/all'
import { overruled } from '../../recipe/check/finding'
import { type Setting, usualCircuit } from '../../recipe/check/setting'
import { contentsKg, type Planned, planned } from '../../recipe/planned'
import { summary } from '../../recipe/summary'
import { daysBetween } from '../../units/day'
import type { Draft, DraftLine, DraftOption } from '../draft'
import type { Card, Facts, Site } from '../facts'
import { cardsOf } from '../job-of'
import { monthOf } from './ask'
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
