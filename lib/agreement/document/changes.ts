import { fullDay } from '../../format/day'
import { moneyFormat } from '../../format/money'
import { list, quantity } from '../../format/words'
import type { Change } from '../../proposal/offer/changes'
import { seasonName } from '../../season/season'
import { instalmentsInWords, planInWords } from '../instalment/words'
import type { AgreedSeason } from '../season'
import type { AgreementDocument } from './document'

/** A field by a key that outlives a change of its name. */
type Field = { readonly key: string; readonly of: string; readonly says: string }

function seasonFields(season: AgreedSeason, document: AgreementDocument): Field[] {
	const key = `season ${season.quarter} ${season.year}`
	const name = seasonName(season)
	const money = moneyFormat(document.currency)
	const named = document.containers.filter(({ id }) => season.containers.includes(id))
	return [
		{
			key: `${key} price`,
			of: `Price of ${name}`,
			says: season.price.is === 'fixed' ? money(season.price.cents) : 'quoted each season',
		},
		{ key: `${key} containers`, of: `Containers of ${name}`, says: list(named.map((each) => each.name)) },
		{
			key: `${key} visits`,
			of: `Visits of ${name}`,
			says: list(season.visits.map(({ kind, count }) => `${kind}: ${count}`)) || 'no visit',
		},
	]
}

/** All that a document says, the money first and the clauses last, in the order in which they are read. */
function fields(document: AgreementDocument): Field[] {
	const { studio, client, from, to, places, containers, seasons, plan, instalments, totalCents, clauses } = document
	const money = moneyFormat(document.currency)
	const nameOf = (place: string) => places.find(({ id }) => id === place)?.name ?? 'a place'
	return [
		{ key: 'total', of: 'Fixed prices together', says: money(totalCents) },
		...seasons.flatMap((season) => seasonFields(season, document)),
		{ key: 'plan', of: 'How it is paid', says: planInWords(plan) },
		{ key: 'instalments', of: 'Instalments', says: instalmentsInWords(instalments, money) },
		{ key: 'from', of: 'Begins', says: fullDay(from) },
		{ key: 'to', of: 'Ends', says: fullDay(to) },
		{ key: 'client', of: 'Client', says: client.name },
		{ key: 'studio', of: 'Studio', says: `${studio.name}, ${studio.signedBy}` },
		...places.map(({ id, name, address }) => ({ key: id, of: `Place “${name}”`, says: `${name}, ${address}` })),
		...containers.map(({ id, name, words, place }) => ({
			key: id,
			of: `Container “${name}”`,
			says: `${name} (${words}) at ${nameOf(place)}`,
		})),
		...clauses.flatMap(({ key, title, text }) => [
			{ key: `clause ${key} title`, of: `Title of “${title}”`, says: title },
			{ key: `clause ${key}`, of: `Clause “${title}”`, says: text },
		]),
	]
}

/** A clause that comes or goes is told once, by its text. */
const isTitleAlone = ({ key }: Field, other: ReadonlyMap<string, Field>) =>
	key.startsWith('clause ') && key.endsWith(' title') && !other.has(key)

const byKey = (of: readonly Field[]) => new Map(of.map((field) => [field.key, field]))

/** What is different from the document that it supersedes, field by field and clause by clause. */
export function documentChanges(before: AgreementDocument, after: AgreementDocument): Change[] {
	const [was, is] = [byKey(fields(before)), byKey(fields(after))]
	const gone = [...was.values()].filter(({ key }) => !is.has(key))
	return [...is.values(), ...gone].flatMap((field) => {
		if (isTitleAlone(field, is.has(field.key) ? was : is)) return []
		const change = { of: field.of, was: was.get(field.key)?.says ?? null, is: is.get(field.key)?.says ?? null }
		return change.was === change.is ? [] : [change]
	})
}

/** "3 things are different from the agreement before: price of winter 2026–27, …" */
export function changesInWords(changes: readonly Change[]): string {
	if (changes.length === 0) return 'Nothing is different from the agreement before.'
	const verb = changes.length === 1 ? 'is' : 'are'
	return `${quantity(changes.length, 'thing')} ${verb} different from the agreement before: ${list(changes.map(({ of }) => of))}.`
}
