import { type Desk, deskOf } from '../../colour/palette/desk'
import { judgeOn } from '../../colour/palette/judge'
import type { Chip, SiteColour } from '../../colour/palette/palette'
import type { Wanted } from '../../recipe/library/substitutes'
import type { ContainerId } from '../../units/id'
import type { Around } from '../design/around/around'
import { askOf } from '../design/ask'
import { wantedIn } from '../design/wanted'
import type { Draft, DraftOption } from '../draft'
import type { Card, Facts } from '../facts'
import { cardsOf } from '../job-of'

/** For whom a draft is started: the draft as it stands, and what is known of the client. */
export type Ground = {
	readonly draft: Draft
	readonly facts: Facts
	readonly site: readonly SiteColour[]
	/** Palettes of another time or door, where they are known. */
	readonly around?: Around
}

/** A draft that was started, and what had to be done otherwise than before. */
export type Fresh = { readonly draft: Draft; readonly told: readonly string[] }

/** Those that the draft has already, of those that are the client's; all of the client's where it has none. */
export function containersOf({ draft, facts }: Pick<Ground, 'draft' | 'facts'>): Draft['containers'] {
	const own = draft.containers.filter(({ id }) => facts.cards.some((card) => card.id === id))
	return own.length > 0 ? own : facts.cards.map(({ id }) => ({ id, mayLeaveOut: false, isNew: false }))
}

export const cardsToFill = (ground: Ground): Card[] => cardsOf({ containers: containersOf(ground) }, ground.facts)

/** What is looked for to stand in for another in one of the containers that are filled; in the first, where none is named. */
export const wantedFor = (ground: Ground, container: ContainerId | null = null): Wanted =>
	wantedIn({ ...ground.draft, containers: containersOf(ground) }, ground.facts, container)

/** What palettes are judged on at this client's, worked out once for all of them; undefined while there is no container. */
export function deskFor(ground: Ground): Desk | undefined {
	const ask = askOf({ ...ground.draft, containers: containersOf(ground) }, ground.facts, ground.site)
	return ask && deskOf(ask)
}

/** Colours with what each echoes, of at most as many letters as a chip's line has. */
export const asPalette = (colours: readonly (Chip & { readonly echoes: string })[]): DraftOption['palette'] =>
	colours.map(({ name, hex, echoes }) => ({ name, hex, echoes: echoes.slice(0, 60) }))

/** Colours with what each echoes at this client, whatever was said of them before. */
export function setAgainst(palette: readonly Chip[], desk: Desk | undefined): DraftOption['palette'] {
	const chips = palette.map(({ name, hex }) => ({ name, hex }))
	return asPalette(desk === undefined ? chips.map((chip) => ({ ...chip, echoes: '' })) : judgeOn(chips, desk).colours)
}

type Put = Pick<Draft, 'options'> & Partial<Pick<Draft, 'title' | 'letter' | 'extras' | 'design' | 'containers'>>

/**
 * The draft as it stands with something put into it. Its dates, its agreement and its own words stay; notes on checks
 * go, for they were about other pots.
 */
export function withPut(ground: Ground, { title = '', letter = '', ...put }: Put): Draft {
	const { draft } = ground
	return {
		...draft,
		containers: containersOf(ground),
		...put,
		title: draft.title || title.slice(0, 120),
		letter: draft.letter || letter,
		overruled: [],
	}
}
