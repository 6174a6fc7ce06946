import { z } from 'zod'
import { isInvoiceNumber } from '../../money/invoice/number'
import { means } from '../../money/ledger/entry'
import { dayField, emptyOr, idField, moneyField, onceField, text, tick } from '../fields'

const amount = moneyField.refine((cents) => cents > 0, 'Give an amount above zero.')
const invoice = z.string().refine(isInvoiceNumber, 'Choose an invoice of this client.')
const reason = text(300, { min: 1 })
const common = { once: onceField, client: idField<'client'>() }
const paid = { on: dayField, amount, means: z.enum(means, 'Say how it came.'), reference: text(80) }

export const paymentForm = z.strictObject({ ...common, ...paid, invoice: emptyOr(invoice), keepRest: tick })
export const refundForm = z.strictObject({ ...common, ...paid })
export const writeOffForm = z.strictObject({ ...common, invoice, amount, reason })
export const creditForm = z.strictObject({ ...common, invoice, amount, reason })
export const undoForm = z.strictObject({ ...common, entry: idField<'entry'>(), reason })

/** Of one client, or of all where none is named. */
export const billForm = z.strictObject({ once: onceField, client: emptyOr(idField<'client'>()) })
export const remindLateForm = z.strictObject({ once: onceField, client: emptyOr(idField<'client'>()), again: tick })
export const payWordsForm = z.strictObject({ once: onceField, payWords: text(600, { lines: true }) })
