import { days, shortDay } from '../format/day'
import type { MoneyFormat } from '../format/money'
import { percent } from '../format/words'
import type { State } from '../proposal/state'
import type { Cents } from '../units/cents'
import { type Day, dayOf, daysBetween, type Moment } from '../units/day'

/** What is kept of a proposal that its row shows. */
export type RowFacts = {
	readonly state: State['is']
	readonly publishedAt: Moment | null
	readonly answeredAt: Moment | null
	readonly seenAt: Moment | null
	readonly remindedAt: Moment | null
	readonly undeliveredAt: Moment | null
	readonly answerBy: Day | null
	readonly palette: string
	readonly paletteCount: number
	readonly valueCents: Cents | null
	readonly marginTenths: number | null
	readonly note: string
	readonly isByPhone: boolean
	/** Of one that was cancelled: what is still to be paid. */
	readonly remainsCents: Cents | null
}

/** A row in finished words. */
export type RowView = {
	readonly waiting: string
	readonly left: string
	readonly isSoon: boolean
	readonly more: string
	readonly palette: string
	readonly value: string
	readonly margin: string
	readonly remindedOn: string
}

const soonDays = 3
const longestNote = 60

function leftInWords(left: number): string {
	return left === 0 ? 'today' : `${days(left)} left`
}

function seenInWords(seen: Day | null, today: Day): string {
	if (seen === null) return 'not seen yet'
	return seen === today ? 'seen today' : `seen ${shortDay(seen)}`
}

function tookInWords(out: Day | null, answered: Day | null): string {
	if (out === null || answered === null) return ''
	const took = daysBetween(out, answered)
	return took === 0 ? 'answered the same day' : `answered in ${days(took)}`
}

function quoted(note: string): string {
	const characters = [...note]
	const isLong = characters.length > longestNote
	return note === '' ? '' : `“${isLong ? `${characters.slice(0, longestNote - 1).join('')}…` : note}”`
}

type Dates = {
	readonly out: Day | null
	readonly answered: Day | null
	readonly seen: Day | null
	readonly undelivered: Day | null
	readonly today: Day
}

/** What else there is to know: whether it arrived and was seen, the first words of a wish, how long the answer took. */
function moreOf(state: State['is'], note: string, { out, answered, seen, undelivered, today }: Dates): string {
	switch (state) {
		case 'waiting for an answer':
			return `${undelivered === null ? '' : 'mail did not arrive, '}${seenInWords(seen, today)}`
		case 'change asked for':
			return quoted(note)
		case 'approved':
		case 'installed':
		case 'skipped':
			return tookInWords(out, answered)
		case 'drafting':
		case 'cancelled':
		case 'withdrawn':
		case 'lapsed':
			return ''
		default:
			return state satisfies never
	}
}

const answered: ReadonlySet<State['is']> = new Set(['approved', 'installed', 'skipped', 'change asked for'])

/** An answer that the studio took down says so wherever it stands. */
function withPhone(more: string, { state, isByPhone }: Pick<RowFacts, 'state' | 'isByPhone'>): string {
	if (!isByPhone || !answered.has(state)) return more
	return more === '' ? 'by phone' : `${more}, by phone`
}

function waitingSince(state: State['is'], { out, answered }: Dates): Day | null {
	if (state === 'waiting for an answer') return out
	return state === 'change asked for' ? answered : null
}

/** Days waited and left, seen, palette, value and margin, as the ledger shows them on `today` in `timeZone`. */
export function rowView(row: RowFacts, today: Day, timeZone: string, money: MoneyFormat): RowView {
	const on = (at: Moment | null) => (at === null ? null : dayOf(at, timeZone))
	const [out, answered] = [on(row.publishedAt), on(row.answeredAt)]
	const dates = { out, answered, seen: on(row.seenAt), undelivered: on(row.undeliveredAt), today }
	const since = waitingSince(row.state, dates)
	const isOut = row.state === 'waiting for an answer'
	const left = isOut && row.answerBy !== null ? daysBetween(today, row.answerBy) : null
	const reminded = on(row.remindedAt)
	const several = row.paletteCount > 1
	const due = row.remainsCents === null || row.remainsCents === 0 ? '' : `${money(row.remainsCents)} remains due`
	return {
		waiting: since === null ? '' : days(daysBetween(since, today)),
		left: left === null ? '' : leftInWords(left),
		isSoon: left !== null && left <= soonDays,
		more: due || withPhone(moreOf(row.state, row.note, dates), row),
		palette: several ? `${row.paletteCount} palettes` : row.palette,
		value: row.valueCents === null ? '' : `${several ? 'from ' : ''}${money(row.valueCents)}`,
		margin: row.marginTenths === null ? '' : percent(Math.round(row.marginTenths / 10)),
		remindedOn: reminded === null ? '' : shortDay(reminded),
	}
}
