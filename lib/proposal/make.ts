import { vesselWords } from '../container/vessel-words'
import type { MoneyFormat } from '../format/money'
import type { JobInputs } from '../pricing/job-schema'
import { price } from '../pricing/price'
import type { Day } from '../units/day'
import { cautions } from './cautions'
import type { Draft, DraftLine } from './draft'
import { lookOf, vesselOf } from './drawn'
import type { Card, Facts, Material } from './facts'
import { cardsOf, jobOf } from './job-of'
import type { Offer, OfferLine, OfferOption } from './offer/offer'
import type { Problem } from './problem'
import { problems } from './ready'

/** A revision before it is published: what the client will see, and what the studio's costing follows from. */
export type Made = {
	readonly offer: Offer
	readonly inputs: readonly { readonly key: string; readonly job: JobInputs }[]
}

const isSome = <T>(value: T | null | undefined): value is T => value !== null && value !== undefined

function offerLines(lines: readonly DraftLine[], { materials }: Facts): OfferLine[] {
	return lines
		.map(({ material, role, holding, count }) => {
			const found = materials.get(material)
			if (found === undefined) return null
			const { name, hex, unit, hazards } = found
			const plain = { role, name, hex, unit, count: count.value, holding, hazards: [...hazards] }
			return { ...plain, look: lookOf(found, count.value) }
		})
		.filter(isSome)
}

const strip = ({ rates: _, ...inputs }: JobInputs & { rates: unknown }): JobInputs => inputs

const extrasAt = ({ extras }: Draft, cards: readonly Card[]) =>
	extras.filter(({ place }) => cards.some((card) => card.place === place))

const known = (lines: readonly DraftLine[], { materials }: Facts): Material[] =>
	[...new Set(lines.map(({ material }) => material))].map((id) => materials.get(id)).filter(isSome)

/** Of what is offered: a pot that the draft no longer has is passed over. */
function materialsIn(draft: Draft, cards: readonly Card[], facts: Facts): Material[] {
	const pots = draft.options.flatMap((option) => option.pots)
	const lines = [
		...pots.filter(({ container }) => cards.some(({ id }) => id === container)).flatMap((pot) => pot.lines),
		...extrasAt(draft, cards).flatMap((extra) => extra.lines),
	]
	return known(lines, facts)
}

type Priced = { readonly option: OfferOption; readonly job: JobInputs }

function makeOption(draft: Draft, option: Draft['options'][number], facts: Facts, money: MoneyFormat): Priced | null {
	const job = jobOf(draft, option, facts)
	if (job === null) return null
	const pots = cardsOf(draft, facts).map((card) => {
		const lines = option.pots.find(({ container }) => container === card.id)?.lines ?? []
		return { container: card.id, lines: offerLines(lines, facts), cautions: cautions(known(lines, facts), [card]) }
	})
	const { key, name, palette } = option
	return { option: { key, name, palette, pots, prices: price(job, { money }).list }, job: strip(job) }
}

/** A container that the agreement's fixed price pays for has no price to save by leaving it out. */
function mayLeaveOut({ containers, agreement }: Draft, id: Card['id']): boolean {
	const isCovered = agreement.is === 'fixed' && agreement.containers.includes(id)
	return !isCovered && containers.some((each) => each.id === id && each.mayLeaveOut)
}

/**
 * The offer as it stands, whether or not it is ready: what the preview shows and what publishing freezes.
 * Dates that are still open fall on `today`.
 */
export function makeOffer(draft: Draft, facts: Facts, money: MoneyFormat, number: number, today: Day): Made {
	const cards = cardsOf(draft, facts)
	const priced = draft.options.map((option) => makeOption(draft, option, facts, money)).filter(isSome)
	const { studio, designer, customer, season, proposal } = facts
	const from = draft.window.from ?? today
	const offer: Offer = {
		v: 1,
		proposal,
		number,
		studio: studio.name,
		signedBy: designer,
		client: customer.name,
		season,
		title: draft.title,
		letter: draft.letter,
		window: { from, to: draft.window.to ?? from },
		answerBy: draft.answerBy ?? today,
		places: facts.sites
			.filter(({ id }) => cards.some(({ place }) => place === id))
			.map(({ id, name, address, wall, door }) => ({ id, name, address, wall, door })),
		containers: cards.map((card) => ({
			id: card.id,
			place: card.place,
			name: card.name,
			words: vesselWords(card, facts.studio.lengths),
			mayLeaveOut: mayLeaveOut(draft, card.id),
			vessel: vesselOf(card),
		})),
		options: priced.map(({ option }) => option),
		extras: extrasAt(draft, cards).map(({ key, name, words, place, lines }) => ({
			key,
			name,
			words,
			place,
			lines: offerLines(lines, facts),
			cautions: cautions(known(lines, facts), []),
		})),
		cautions: cautions(materialsIn(draft, cards, facts), cards),
	}
	return { offer, inputs: priced.map(({ option, job }) => ({ key: option.key, job })) }
}

export type Ready = ({ readonly ok: true } & Made) | { readonly ok: false; readonly problems: readonly Problem[] }

/** The offer that a draft makes, or what stops it. */
export function makeRevision(draft: Draft, facts: Facts, money: MoneyFormat, number: number, today: Day): Ready {
	const found = problems(draft, facts, today)
	if (found.length > 0) return { ok: false, problems: found }
	return { ok: true, ...makeOffer(draft, facts, money, number, today) }
}
