import type { Change } from '../../proposal/offer/changes'
import type { AgreedSeason } from '../season'
import type { AgreementDocument } from './document'
import { showsAmount } from './shows-amount'

type Money = Pick<AgreementDocument, 'currency' | 'plan' | 'instalments' | 'totalCents'> & {
	/** As the seasons follow each other. */
	readonly prices: readonly AgreedSeason['price'][]
}

/** An agreement as somebody sees it; `money` is null for one who may only look. */
export type ShownDocument = Pick<
	AgreementDocument,
	'number' | 'studio' | 'client' | 'from' | 'to' | 'places' | 'containers' | 'clauses'
> & {
	readonly seasons: readonly Omit<AgreedSeason, 'price'>[]
	readonly money: Money | null
	/** Clauses that are not shown to them because they name an amount. */
	readonly leftOut: number
}

/** What is shown of a document: for one who may only look, every clause, price and instalment that shows an amount is left out. */
export function shownTo(document: AgreementDocument, mayReadMoney: boolean): ShownDocument {
	const { number, studio, client, from, to, places, containers, currency, plan, instalments, totalCents } = document
	const clauses = document.clauses.filter(
		({ title, text }) => mayReadMoney || !(showsAmount(title) || showsAmount(text)),
	)
	const prices = document.seasons.map(({ price }) => price)
	return {
		...{ number, studio, client, from, to, places, containers, clauses },
		seasons: document.seasons.map(({ price: _, ...season }) => season),
		money: mayReadMoney ? { currency, plan, instalments, totalCents, prices } : null,
		leftOut: document.clauses.length - clauses.length,
	}
}

const namesAmount = ({ of, was, is }: Change) => [of, was ?? '', is ?? ''].some(showsAmount)

/** The changes that somebody may read. */
export const changesTo = (changes: readonly Change[], mayReadMoney: boolean): readonly Change[] =>
	changes.filter((change) => mayReadMoney || !namesAmount(change))
