import { openingCm2, soilLitres } from '../container/soil'
import type { Job, JobContainer, JobLine, Payer } from '../pricing/job'
import { canBeLent } from '../recipe/material'
import { cents } from '../units/cents'
import type { Day } from '../units/day'
import type { Draft, DraftLine, DraftOption } from './draft'
import type { Card, Customer, Facts } from './facts'

const isSome = <T>(value: T | null): value is T => value !== null

/** A line that can be priced; null while its material or pack is not known, or what cannot come back is lent. */
function jobLine({ material, holding, count }: DraftLine, { materials }: Facts): JobLine | null {
	const found = materials.get(material)
	if (found === undefined || found.pack === null) return null
	if (holding === 'lent' && !canBeLent(found.kind)) return null
	const { name, unit, kind, piece, piecesPerUnit, pack, usesBefore, onlyHere } = found
	return { name, unit, kind, piece, piecesPerUnit, count: count.value, holding, pack, usesBefore, onlyHere }
}

const jobLines = (lines: readonly DraftLine[], facts: Facts) => lines.map((line) => jobLine(line, facts)).filter(isSome)

function jobContainer(card: Card, draft: Draft, option: DraftOption, facts: Facts): JobContainer {
	const pot = option.pots.find(({ container }) => container === card.id)
	const isNew = draft.containers.some((each) => each.id === card.id && each.isNew)
	return {
		id: card.id,
		place: card.place,
		name: card.name,
		openingCm2: openingCm2(card),
		soilL: soilLitres(card),
		isNew,
		lines: jobLines(pot?.lines ?? [], facts),
	}
}

/** A certificate counts while it holds on the last day of the install. */
function payerOf({ kind, netDays, exempt }: Customer, lastDay: Day | null): Payer {
	const holds = exempt !== null && lastDay !== null && exempt.expires >= lastDay
	return { kind, netDays, exemptCertificate: holds ? exempt.certificate : null }
}

/** The containers of a draft that are the client's, in the order of the draft. */
export function cardsOf({ containers }: Pick<Draft, 'containers'>, { cards }: Pick<Facts, 'cards'>): Card[] {
	return containers.map(({ id }) => cards.find((card) => card.id === id) ?? null).filter(isSome)
}

/** What pricing needs to know of one option; null while no container of the client's is in the draft. */
export function jobOf(draft: Draft, option: DraftOption, facts: Facts): Job | null {
	const cards = cardsOf(draft, facts)
	const sites = facts.sites.filter(({ id }) => cards.some(({ place }) => place === id))
	if (sites.length === 0) return null
	return {
		currency: facts.studio.currency,
		ratesVersion: facts.ratesVersion,
		rates: facts.rates,
		quarter: facts.season.quarter,
		payer: payerOf(facts.customer, draft.window.to),
		agreement: draft.agreement,
		supplementCents: draft.agreement.is === 'fixed' ? option.supplementCents : cents(0),
		design: draft.design,
		visits: sites.map(({ id, name, taxMilliPercent, driveMinutes, zoneCents }) => ({
			place: id,
			name,
			taxMilliPercent,
			driveMinutes,
			zoneCents,
			takeDown: draft.takeDown,
		})),
		containers: cards.map((card) => jobContainer(card, draft, option, facts)),
		extras: draft.extras
			.filter(({ place }) => sites.some(({ id }) => id === place))
			.map(({ key, place, name, minutes, lines }) => ({ key, place, name, minutes, lines: jobLines(lines, facts) })),
	}
}
