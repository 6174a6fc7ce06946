import { longDay } from '../format/day'
import type { MoneyFormat } from '../format/money'
import { capital, numberWord } from '../format/words'
import type { State } from '../proposal/state'
import { type Cents, cents } from '../units/cents'
import type { Day } from '../units/day'

export type StateTotal = {
	readonly state: State['is']
	readonly count: number
	readonly valueCents: Cents
	readonly firstAnswerBy: Day | null
	/** Of several palettes the cheapest is counted until one is chosen. */
	readonly isLeast: boolean
}

const small = (count: number) => (count <= 12 ? numberWord(count).toLowerCase() : String(count))

/** How the season stands, in two or three sentences: who owes an answer, who waits for the studio, what it comes to. */
export function seasonSentence(totals: readonly StateTotal[], money: MoneyFormat): string {
	const of = (...states: State['is'][]) => totals.filter(({ state }) => states.includes(state))
	const count = (found: readonly StateTotal[]) => found.reduce((sum, each) => sum + each.count, 0)
	const value = (found: readonly StateTotal[]) => cents(found.reduce((sum, each) => sum + each.valueCents, 0))
	const all = count(totals)
	if (all === 0) return 'Nobody has a proposal for this season yet.'
	const out = of('waiting for an answer')
	const owing = count(out)
	const first = out[0]?.firstAnswerBy
	const owe = owing === 1 ? 'owes' : 'owe'
	const waiting =
		owing === 0
			? `None of ${small(all)} owes an answer.`
			: `${capital(small(owing))} of ${small(all)} still ${owe} an answer${first ? `, the first by ${longDay(first)}` : ''}.`
	const ours = count(of('change asked for', 'drafting'))
	const us = ours === 0 ? '' : ` ${capital(small(ours))} ${ours === 1 ? 'waits' : 'wait'} for you.`
	const yes = of('approved', 'installed')
	const least = out.some(({ isLeast }) => isLeast) ? 'at least ' : ''
	return `${waiting}${us} ${money(value(yes))} is approved, ${least}${money(value(out))} is out, before tax.`
}
