import type { MoneyFormat } from '../../format/money'
import { numberWord, percent } from '../../format/words'
import type { Result } from '../result/season-result'

/** "13 h 5 min" */
export function hoursInWords(minutes: number): string {
	const whole = Math.round(minutes)
	const hours = Math.floor(whole / 60)
	return hours === 0 ? `${whole} min` : `${hours} h ${whole % 60} min`
}

/** "margin 45.8 %" */
export const marginInWords = (margin: number | null): string =>
	margin === null ? 'no margin' : `margin ${percent(margin)}`

const jobs = (count: number) => `${numberWord(count)} ${count === 1 ? 'job has' : 'jobs have'}`

/** What is not known yet, a sentence for each; none where all is. */
export function missingInWords({ actual, hours }: Result): string[] {
	const cost = actual.missing === 0 ? [] : [`${jobs(actual.missing)} no actual cost yet.`]
	return hours.missing === 0 ? cost : [...cost, `${jobs(hours.missing)} no hours yet.`]
}

/** "$1,180.00, estimated to cost $640.00: margin 45.8 %" */
export function resultInWords(result: Result, money: MoneyFormat): string {
	const { valueCents, estimatedCostCents, estimatedMarginPercent } = result
	return `${money(valueCents)}, estimated to cost ${money(estimatedCostCents)}: ${marginInWords(estimatedMarginPercent)}`
}

/** The same of what is known; null while nothing is. */
export function actualInWords({ actual }: Result, money: MoneyFormat): string | null {
	if (actual.jobs === 0) return null
	return `${money(actual.valueCents)}, in fact ${money(actual.costCents)}: ${marginInWords(actual.marginPercent)}`
}
