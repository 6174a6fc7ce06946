'use server'
import { wakeSender } from '@/app/server/mail/sender'
import { stamp } from '@/app/server/start/clock'
import { isDenied, refused, studioAction, type Went } from '@/app/server/studio/studio-action'
import { creditInvoice } from '@/db/money/acts/credit'
import { recordPayment } from '@/db/money/acts/record-payment'
import { refund } from '@/db/money/acts/refund'
import { undoEntry } from '@/db/money/acts/undo'
import { writeOff } from '@/db/money/acts/write-off'
import type { Denied } from '@/db/viewer'
import { creditForm, paymentForm, refundForm, undoForm, writeOffForm } from '@/lib/forms/rates/money-forms'
import { type MoneyRefusal, moneyRefusalInWords } from '@/lib/money/words/refusal'

const page = ({ client }: { client?: unknown }) => `/studio/money/${String(client)}`
const act = 'change accounts'

type Said = { readonly ok: true } | { readonly ok: false; readonly why: MoneyRefusal } | Denied

async function went(said: Said, client: string): Promise<Went> {
	if (said.ok) return { to: `/studio/money/${client}?kept` }
	return isDenied(said) ? refused(said) : { errors: { amount: moneyRefusalInWords(said.why) } }
}

export async function payIn(form: FormData): Promise<void> {
	await studioAction(form, { act, schema: paymentForm, page }, async (who, { once, amount: cents, ...paid }) => {
		const said = await recordPayment(who, { ...paid, cents }, stamp(once))
		if (said.ok) wakeSender()
		return went(said, paid.client)
	})
}

export async function payBack(form: FormData): Promise<void> {
	await studioAction(form, { act, schema: refundForm, page }, async (who, { once, amount: cents, ...paid }) =>
		went(await refund(who, { ...paid, cents }, stamp(once)), paid.client),
	)
}

export async function giveUp(form: FormData): Promise<void> {
	await studioAction(form, { act, schema: writeOffForm, page }, async (who, { once, amount: cents, ...off }) =>
		went(await writeOff(who, { ...off, cents }, stamp(once)), off.client),
	)
}

export async function creditOne(form: FormData): Promise<void> {
	await studioAction(form, { act, schema: creditForm, page }, async (who, { once, amount: cents, ...off }) =>
		went(await creditInvoice(who, { ...off, cents }, stamp(once)), off.client),
	)
}

export async function undo(form: FormData): Promise<void> {
	await studioAction(form, { act, schema: undoForm, page }, async (who, { once, ...undoing }) => {
		const said = await undoEntry(who, undoing, stamp(once))
		const told = await went(said, undoing.client)
		return 'errors' in told ? { errors: { reason: told.errors.amount ?? '' } } : told
	})
}
