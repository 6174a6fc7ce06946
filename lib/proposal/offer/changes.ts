import { daySpan, longDay } from '../../format/day'
import type { MoneyFormat } from '../../format/money'
import { list, quantity } from '../../format/words'
import { everything } from '../../pricing/quote/choice'
import { quote } from '../../pricing/quote/quote'
import type { Offer, OfferLine, OfferOption } from './offer'
import { extraCents } from './offered-prices'

/** One field that differs between two revisions, in the words that a client reads; null where there was nothing. */
export type Change = { readonly of: string; readonly was: string | null; readonly is: string | null }

/** A field by a key that outlives a change of name. */
type Field = { readonly key: string; readonly of: string; readonly says: string }

const amount = ({ count, unit, holding }: OfferLine) => `${quantity(count, unit)}${holding === 'lent' ? ', lent' : ''}`

function potFields({ containers }: Offer, option: OfferOption): Field[] {
	const nameOf = (container: string) => containers.find(({ id }) => id === container)?.name ?? 'a container'
	return option.pots.flatMap(({ container, lines }) =>
		lines.map((line) => ({
			key: `${option.key} ${container} ${line.role} ${line.name}`,
			of: `${option.name}, ${nameOf(container)}: ${line.name}`,
			says: amount(line),
		})),
	)
}

function optionFields(offer: Offer, option: OfferOption, money: MoneyFormat): Field[] {
	const { key, name, palette, prices } = option
	const colours = palette.map((chip) => `${chip.name} ${chip.hex}${chip.echoes ? ` (${chip.echoes})` : ''}`)
	return [
		{ key: `${key} total`, of: `${name}: total`, says: money(quote(prices, everything).totalCents) },
		...potFields(offer, option),
		{ key: `${key} name`, of: `Palette “${name}”`, says: name },
		{ key: `${key} colours`, of: `${name}: colours`, says: list(colours) },
	]
}

function extraFields({ extras, options: [option] }: Offer, money: MoneyFormat): Field[] {
	return extras.map(({ key, name, words, lines }) => {
		const holds = lines.map((line) => `${line.name}, ${amount(line)}`).join('; ')
		const adds = option && extraCents(option.prices, key)
		const says = [name, words, holds, adds === undefined ? '' : money(adds)].filter(Boolean).join(' · ')
		return { key: `extra ${key}`, of: `Extra “${name}”`, says }
	})
}

/** Everything that a client can see in an offer: price and pots first, the letter last. */
function fields(offer: Offer, money: MoneyFormat): Field[] {
	return [
		...offer.options.flatMap((option) => optionFields(offer, option, money)),
		...extraFields(offer, money),
		...offer.containers.map(({ id, name, words, mayLeaveOut }) => ({
			key: id,
			of: name,
			says: `${words}${mayLeaveOut ? ', may be left out' : ''}`,
		})),
		{ key: 'window', of: 'Goes in', says: daySpan(offer.window.from, offer.window.to) },
		{ key: 'answer by', of: 'Answer by', says: longDay(offer.answerBy) },
		{ key: 'title', of: 'Title', says: offer.title },
		{ key: 'cautions', of: 'Cautions', says: offer.cautions.join(' ') },
		{ key: letter, of: 'Letter', says: offer.letter },
	]
}

const letter = 'letter'
const paragraphs = (text: string) => text.split(/\n{2,}/)

/** Of two letters the paragraphs that only one of them has; both whole when they differ in order alone. */
function letterChange({ of, was, is }: Change): Change {
	const [before, after] = [paragraphs(was ?? ''), paragraphs(is ?? '')]
	const gone = before.filter((each) => !after.includes(each)).join('\n\n')
	const come = after.filter((each) => !before.includes(each)).join('\n\n')
	return gone === '' && come === '' ? { of, was, is } : { of, was: gone || null, is: come || null }
}

/** Fields by their keys; a material that stands in two lines of a pot is one field that says both. */
function byKey(found: readonly Field[]): Map<string, Field> {
	const all = new Map<string, Field>()
	for (const field of found) {
		const says = [all.get(field.key)?.says, field.says].filter((each) => each !== undefined).join(' and ')
		all.set(field.key, { ...field, says })
	}
	return all
}

/** What changed from one revision to the next, field by field; what is the same in both is left out. */
export function changes(before: Offer, after: Offer, money: MoneyFormat): Change[] {
	const was = byKey(fields(before, money))
	const is = byKey(fields(after, money))
	const keys = new Set([...was.keys(), ...is.keys()].filter((key) => key !== letter))
	return [...keys, letter].flatMap((key) => {
		const change = {
			of: is.get(key)?.of ?? was.get(key)?.of ?? key,
			was: was.get(key)?.says ?? null,
			is: is.get(key)?.says ?? null,
		}
		if (change.was === change.is) return []
		return [key === letter ? letterChange(change) : change]
	})
}
