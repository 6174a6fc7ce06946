import { recordPayment } from '@/db/money/acts/record-payment'
import { billDue } from '@/db/money/bills/bill-due'
import { savePayWords } from '@/db/money/pay-words'
import { readAccount } from '@/db/money/read-account'
import { remindLateDue } from '@/db/money/remind-late'
import type { Stamp } from '@/db/stamp'
import { viewerOf } from '@/db/viewer'
import type { OpenInvoice } from '@/lib/money/ledger/account'
import type { Means } from '@/lib/money/ledger/entry'
import type { Cents } from '@/lib/units/cents'
import { cents } from '@/lib/units/cents'
import { addDays } from '@/lib/units/day'
import type { ClientKey } from '../../cast/clients'
import { type Habit, habits, parts, payWords } from '../../cast/paying'
import { entriesOf } from '../keys'
import { must } from '../must'
import type { Stage } from '../stage'
import { type Act, momentOn } from '../timeline'

type Paid = {
	readonly client: ClientKey
	readonly invoice: OpenInvoice
	readonly cents: Cents
	readonly means: Means
	readonly reference: string
}

async function openOf(stage: Stage, client: ClientKey, stamp: Stamp) {
	const page = must(client, await readAccount(await stage.designer(), stage.clients.of(client), stamp))
	return { on: page.today, open: page.account.invoices.filter(({ openCents }) => openCents > 0) }
}

async function pay(stage: Stage, { client, invoice, ...paid }: Paid, on: OpenInvoice['on'], stamp: Stamp) {
	const payment = { client: stage.clients.of(client), on, invoice: invoice.number, keepRest: false, ...paid }
	must(client, await recordPayment(await stage.designer(), payment, stamp))
}

async function payAll(stage: Stage, client: ClientKey, { days, means, reference }: Habit, stamp: Stamp) {
	const { on, open } = await openOf(stage, client, stamp)
	for (const invoice of open)
		if (addDays(invoice.on, days) <= on)
			await pay(stage, { client, invoice, cents: invoice.openCents, means, reference }, on, stamp)
}

/** What the house does by itself each morning, and what the post brings after it. */
async function morning(stage: Stage, on: number, stamp: Stamp): Promise<void> {
	const house = await viewerOf('system')
	await billDue(house, stamp)
	await remindLateDue(house, stamp)
	for (const [client, habit] of entriesOf(habits))
		if (habit !== undefined && on < (habit.until ?? 0)) await payAll(stage, client, habit, stamp)
}

/** How the studio is paid is said in the first summer; from then on it asks by itself. */
const begun = -107
/** The house does it daily; so many days apart is enough to tell the story. */
const apart = 3

const mornings = (stage: Stage): Act[] =>
	Array.from({ length: Math.floor(-begun / apart) }, (_, index) => begun + 1 + index * apart).map((on) => ({
		at: momentOn(stage.today, on, '14:00'),
		run: (stamp: Stamp) => morning(stage, on, stamp),
	}))

/** How the year's bills are asked for and paid. */
export const billing = (stage: Stage): Act[] => [
	{
		at: momentOn(stage.today, begun, '14:45'),
		run: async (stamp) => {
			must('pay', await savePayWords(await stage.designer(), payWords, stamp))
		},
	},
	...mornings(stage),
	...parts.map(({ on, at, client, cents: amount, means, reference }) => ({
		at: momentOn(stage.today, on, at),
		run: async (stamp: Stamp) => {
			const { on: today, open } = await openOf(stage, client, stamp)
			const [invoice] = open
			if (invoice === undefined) throw new Error(`${client} has nothing open`)
			await pay(stage, { client, invoice, cents: cents(amount), means, reference }, today, stamp)
		},
	})),
]
