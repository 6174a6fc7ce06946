import { shortDay } from '../format/day'
import type { MoneyFormat } from '../format/money'
import { list, percent } from '../format/words'
import type { Recipient } from '../proposal/desk/publish-words'
import type { Cents } from '../units/cents'
import type { Day } from '../units/day'

type Outlook = {
	readonly ok: true
	readonly totalCents: Cents
	readonly beforeCents: Cents | null
	readonly isLeast: boolean
	readonly marginTenths: number | null
	readonly isUnderFloor: boolean
	readonly recipients: readonly Recipient[]
	readonly answerBy: Day
}
type Missing = { readonly ok: false; readonly problems: readonly { readonly says: string }[] }

export type Drafted = {
	readonly id: string
	readonly name: string
	readonly version: number
	readonly outlook: Outlook | Missing
}

/** A draft that is ready, in finished words. */
export type ReadyView = {
	readonly id: string
	readonly name: string
	/** What its box sends. */
	readonly pick: string
	readonly total: string
	readonly before: string
	readonly margin: string
	readonly isUnderFloor: boolean
	readonly answerBy: string
	readonly mailed: string
}
export type NotReadyView = { readonly id: string; readonly name: string; readonly problems: readonly string[] }

function readyView({ id, name, version }: Drafted, outlook: Outlook, money: MoneyFormat): ReadyView {
	const { totalCents, beforeCents, isLeast, marginTenths, isUnderFloor, recipients, answerBy } = outlook
	return {
		...{ id, name, pick: `${id}.${version}`, isUnderFloor, answerBy: shortDay(answerBy) },
		total: `${isLeast ? 'from ' : ''}${money(totalCents)}`,
		before: beforeCents === null ? '' : money(beforeCents),
		margin: marginTenths === null ? '' : percent(Math.round(marginTenths / 10)),
		mailed: list(recipients.map(({ name: to, may }) => (may === 'look' ? `${to} (looks)` : to))),
	}
}

/** The drafts of a season: those that can be published as they are, and those that cannot, with why. */
export function draftViews(drafts: readonly Drafted[], money: MoneyFormat) {
	const ready: ReadyView[] = []
	const notReady: NotReadyView[] = []
	for (const each of drafts) {
		const { id, name, outlook } = each
		if (outlook.ok) ready.push(readyView(each, outlook, money))
		else notReady.push({ id, name, problems: [...new Set(outlook.problems.map(({ says }) => says))] })
	}
	return { ready, notReady }
}
