import 'server-only'
import type { GivenAnswer } from '@/db/proposals/read-offer'
import { answeredBy } from '@/lib/proposal/offer/answered-by'
import type { Approved } from '@/lib/proposal/offer/receipt'
import { dayOf } from '@/lib/units/day'

/** An answer as the receipt of it tells: who, and on which day of the studio's. */
export const approvalOf = (answer: GivenAnswer, timeZone: string): Approved => ({
	...answer,
	on: dayOf(answer.at, timeZone),
	by: answeredBy(answer.word, answer.words),
	purchaseOrder: answer.words?.purchaseOrder ?? '',
})
