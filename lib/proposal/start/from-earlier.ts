import type { Stand, Vessel } from '../../container/card'
import { capital, numberWord } from '../../format/words'
import { heldAnew } from '../../recipe/held-anew'
import { type Season, seasonName } from '../../season/season'
import { cents } from '../../units/cents'
import { grownLines, regrown } from '../design/grown-lines'
import type { Draft, DraftExtra, DraftLine, DraftOption } from '../draft'
import type { Card } from '../facts'
import { cardsToFill, containersOf, deskFor, type Fresh, type Ground, setAgainst, wantedFor, withPut } from './fresh'
import { oldPots, recipeFor, recipesIn, type Vessels } from './old-pots'
import { soundRecipe } from './sound-recipe'
import { type StandIns, standInsFor, withStandIns } from './stand-ins'

/** A proposal of an earlier season of the same client. */
export type Earlier = {
	readonly draft: Draft
	readonly season: Season
	/** Key of the option that was approved; null where none was. */
	readonly approved: string | null
	/** As they were then, as far as it is known. */
	readonly vessels: Vessels
}

const measures = [
	'shape',
	'topCm',
	'topDepthCm',
	'bottomCm',
	'bottomDepthCm',
	'heightCm',
	'wallCm',
	'headspaceCm',
	'soilDepthCm',
	'stands',
] as const

const isSame = (card: Card, then: Vessel & { readonly stands: Stand }): boolean =>
	measures.every((of) => card[of] === then[of])

/** What was fixed by hand stays fixed, in the same container alone; what stands in for another grows as that did. */
function keptLines(lines: readonly DraftLine[], standIns: StandIns, card: Card, { facts }: Ground): DraftLine[] {
	const sound = withStandIns(lines, standIns).map(
		(line): DraftLine =>
			line.count.way === 'typed'
				? line
				: { ...line, count: { ...line.count, grows: heldAnew(line.count.grows, standIns) } },
	)
	return regrown(sound, card, facts.materials)
}

type Made = { readonly option: DraftOption; readonly told: readonly string[] }

function optionFrom(of: DraftOption, key: string, { vessels }: Earlier, ground: Ground): Made {
	const { materials } = ground.facts
	const wanted = wantedFor(ground)
	const recipes = recipesIn(oldPots(of, vessels), { materials, isSameClient: true })
	const named = of.pots.flatMap(({ lines }) => lines.map(({ material }) => material))
	const { standIns, told } = standInsFor(named, materials, wanted)
	const pots = cardsToFill(ground).map((card) => {
		const then = vessels.get(card.id)
		const pot = of.pots.find(({ container }) => container === card.id)
		if (pot !== undefined && then !== undefined && isSame(card, then))
			return { container: card.id, lines: keptLines(pot.lines, standIns, card, ground) }
		const own =
			pot && then ? recipesIn([{ vessel: then, lines: pot.lines }], { materials, isSameClient: true }) : recipes
		const { recipe } = soundRecipe(recipeFor(card, own), materials, wanted)
		return { container: card.id, lines: grownLines(recipe, [], card, materials) }
	})
	const palette = setAgainst(of.palette, deskFor(ground))
	return { option: { key, name: of.name, palette, pots, supplementCents: cents(0) }, told }
}

/** An extra comes back where its place is still to be visited; its counts are no pot's. */
function extrasFrom({ draft }: Earlier, ground: Ground): { extras: DraftExtra[]; told: readonly string[] } {
	const places = new Set(cardsToFill(ground).map(({ place }) => place))
	const there = draft.extras.filter(({ place }) => places.has(place))
	const named = there.flatMap(({ lines }) => lines.map(({ material }) => material))
	const { standIns, told } = standInsFor(named, ground.facts.materials, wantedFor(ground))
	const extras = there.map((extra) => ({ ...extra, lines: withStandIns(extra.lines, standIns) }))
	return { extras: extras.filter(({ lines, minutes }) => lines.length > 0 || minutes > 0), told }
}

function goneWords({ draft, season }: Earlier, { facts }: Ground): string[] {
	const gone = draft.containers.filter(({ id }) => !facts.cards.some((card) => card.id === id)).length
	if (gone === 0) return []
	const what = gone === 1 ? 'container of then is' : 'containers of then are'
	return [`${capital(numberWord(gone).toLowerCase())} ${what} gone since ${seasonName(season)}.`]
}

/** Which may be left out is taken over; all else about a container is as it is now. */
function containersFrom({ draft }: Earlier, ground: Ground): Draft['containers'] {
	const may = new Set(draft.containers.filter(({ mayLeaveOut }) => mayLeaveOut).map(({ id }) => id))
	return containersOf(ground).map((each) => ({ ...each, mayLeaveOut: each.mayLeaveOut || may.has(each.id) }))
}

/**
 * As in an earlier season: the palette that was approved, or all where none was, before the wall as it is now. Counts
 * fixed by hand stay where container and measures are the same; all else grows anew. Dates, letter, notes, agreement
 * and prices are not taken over.
 */
export function fromEarlier(earlier: Earlier, ground: Ground): Fresh {
	const approved = earlier.draft.options.filter(({ key }) => key === earlier.approved)
	const taken = approved.length > 0 ? approved : earlier.draft.options
	const made = taken.map((option, index) => optionFrom(option, `p${index + 1}`, earlier, ground))
	const options = made.map(({ option }) => option)
	const { extras, told } = extrasFrom(earlier, ground)
	const draft = withPut(ground, {
		title: options[0]?.name ?? '',
		options,
		extras,
		design: 'repeat',
		containers: containersFrom(earlier, ground),
	})
	return { draft, told: [...new Set([...goneWords(earlier, ground), ...made.flatMap((each) => each.told), ...told])] }
}
