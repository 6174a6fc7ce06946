import { days, fullDay } from '../../format/day'
import { type MoneyFormat, moneyFormat } from '../../format/money'
import { quantity } from '../../format/words'
import type { AgreementDocument } from '../document/document'
import { type Ending, type EndingRefusal, noticeMissing } from './ending'
import type { Remains } from './remains'

/** What is wrong and what to do, as the form says it. */
export const endingTold: Readonly<Record<EndingRefusal, string>> = {
	'before it begins': 'That day lies before the agreement begins. Choose a later one.',
	'over by then': 'The agreement is over by then anyway. Choose an earlier day.',
	'said in days to come': 'That day is still to come. Write down when it was said.',
}

function balance({ remainsCents, backCents }: Remains, money: MoneyFormat): string {
	if (remainsCents > 0) return `${money(remainsCents)} remains due`
	return backCents > 0 ? `${money(backCents)} is paid back` : 'nothing remains due'
}

function noticeWords(ending: Ending, noticeDays: number | null): string[] {
	const missing = noticeDays === null ? 0 : noticeMissing(ending, noticeDays)
	return missing === 0
		? []
		: [`That is ${days(missing)} sooner than the ${days(noticeDays ?? 0)} of notice that were agreed.`]
}

/** The clause that says what happens then, where the agreement has one. */
const clauseOf = ({ clauses }: AgreementDocument) =>
	clauses.filter(({ key }) => key === 'ending').map(({ text }) => `The agreement says: “${text}”`)

/** How it ends and what remains due, a sentence each; amounts before tax. */
export function endingInWords(
	ending: Ending,
	document: AgreementDocument,
	remains: Remains,
	noticeDays: number | null,
): string[] {
	const money = moneyFormat(document.currency)
	const who = ending.by === 'client' ? document.client.name : document.studio.name
	const { dueCents, dueCount, paidCents, fallsAwayCents } = remains
	return [
		`${who} ends the agreement on ${fullDay(ending.on)}: “${ending.reason}”.`,
		...noticeWords(ending, noticeDays),
		dueCount === 0
			? `No instalment falls due until then; ${money(paidCents)} was paid, so ${balance(remains, money)}.`
			: `Until then ${money(dueCents)} before tax falls due in ${quantity(dueCount, 'instalment')}; ${money(paidCents)} was paid, so ${balance(remains, money)}.`,
		...(fallsAwayCents === 0 ? [] : [`${money(fallsAwayCents)} falls away.`]),
		...clauseOf(document),
	]
}
