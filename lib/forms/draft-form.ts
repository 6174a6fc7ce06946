import { z } from 'zod'
import type { Draft } from '../proposal/draft'
import { holdingSchema, roleSchema } from '../recipe/material'
import { growsSchema } from '../recipe/recipe'
import { amountField, dayField, decimalField, hexField, idField, text } from './fields'

const noDay = z.literal('').transform(() => null)
const dayOrNone = z.union([noDay, dayField], 'Choose a day of the calendar.')
const key = z.string().regex(/^[a-z0-9]{1,12}$/, 'Open the proposal again.')

/** `grows` is null for a line that the designer made by hand; `isKept` holds a count while the recipe grows anew. */
const line = z
	.strictObject({
		material: idField<'material'>(),
		role: roleSchema,
		holding: holdingSchema,
		count: decimalField(0, 9999),
		grows: growsSchema.nullable(),
		isKept: z.boolean(),
	})
	.transform(({ count: value, grows, isKept, ...rest }) => ({
		...rest,
		count: grows === null ? { way: 'typed' as const, value } : { way: 'grown' as const, value, grows, isKept },
	}))
const lines = z.array(line).max(60, 'Sixty lines are the most.')

const option = z.strictObject({
	key,
	name: text(60),
	palette: z
		.array(z.strictObject({ name: text(40), hex: hexField, echoes: text(60) }))
		.max(8, 'Eight colours are the most.'),
	pots: z.array(z.strictObject({ container: idField<'container'>(), lines })).max(60),
	supplementCents: amountField,
})

const extra = z.strictObject({
	key,
	name: text(80),
	words: text(300),
	place: idField<'place'>(),
	minutes: decimalField(0, 600),
	lines,
})

const overruled = z.strictObject({
	option: key,
	container: idField<'container'>(),
	check: z.string().max(80, 'Open the proposal again.'),
	note: text(200, { min: 1 }),
})

const agreement = z.discriminatedUnion('is', [
	z.strictObject({ is: z.literal('none') }),
	z.strictObject({ is: z.literal('discount'), percent: decimalField(0, 100) }),
	z.strictObject({ is: z.literal('fixed'), cents: amountField, containers: z.array(idField<'container'>()).max(60) }),
])

/** By its key a client picks a palette or an extra: one key, one thing. */
const keysDiffer = (of: readonly { readonly key: string }[]) => new Set(of.map((each) => each.key)).size === of.length

/** The editor's text to a draft: every number, amount and date as it was typed. */
export const draftForm = z.strictObject({
	v: z.literal(1),
	title: text(120),
	letter: text(4000, { lines: true }),
	window: z.strictObject({ from: dayOrNone, to: dayOrNone }),
	answerBy: dayOrNone,
	design: z.enum(['new', 'repeat']),
	takeDown: z.boolean(),
	containers: z
		.array(z.strictObject({ id: idField<'container'>(), mayLeaveOut: z.boolean(), isNew: z.boolean() }))
		.max(60),
	options: z.array(option).max(4, 'Four palettes are the most.').refine(keysDiffer, 'Open the proposal again.'),
	extras: z.array(extra).max(20, 'Twenty extras are the most.').refine(keysDiffer, 'Open the proposal again.'),
	agreement,
	overruled: z.array(overruled).max(200, 'Two hundred notes are the most.'),
})

/** What the editor holds while it is typed: the draft as text. */
export type DraftText = z.input<typeof draftForm>

const money = (cents: number) => (cents / 100).toFixed(2)

const linesText = (of: Draft['extras'][number]['lines']): DraftText['extras'][number]['lines'] =>
	of.map(({ count, ...rest }) => ({
		...rest,
		count: String(count.value),
		grows: count.way === 'grown' ? count.grows : null,
		isKept: count.way === 'grown' && count.isKept,
	}))

function agreementText(of: Draft['agreement']): DraftText['agreement'] {
	if (of.is === 'discount') return { is: of.is, percent: String(of.percent) }
	return of.is === 'fixed' ? { is: of.is, cents: money(of.cents), containers: [...of.containers] } : of
}

/** An option as the editor shows it. */
export const optionText = (of: Draft['options'][number]): DraftText['options'][number] => ({
	...of,
	supplementCents: money(of.supplementCents),
	pots: of.pots.map(({ container, lines: within }) => ({ container, lines: linesText(within) })),
})

/** A draft as the editor shows it; `draftForm` reads it back. */
export function draftText(draft: Draft): DraftText {
	const { window, answerBy, options, extras } = draft
	return {
		...draft,
		window: { from: window.from ?? '', to: window.to ?? '' },
		answerBy: answerBy ?? '',
		options: options.map(optionText),
		extras: extras.map((each) => ({ ...each, minutes: String(each.minutes), lines: linesText(each.lines) })),
		agreement: agreementText(draft.agreement),
	}
}

/** Bodies of what the editor asks. */
export const saveBody = z.strictObject({ version: z.int().min(1), draft: draftForm })
/** `measured` asks for a measure beside the pots in the pictures. */
export const priceBody = z.strictObject({ draft: draftForm, measured: z.boolean().default(false) })
export const proposeBody = z.strictObject({ draft: draftForm })
export const growBody = z.strictObject({ draft: draftForm, option: key, recipe: idField<'recipe'>().nullable() })

/** What can stand in for a material: in one container, or, with none named, anywhere. */
export const standInsBody = z.strictObject({
	draft: draftForm,
	material: idField<'material'>(),
	container: idField<'container'>().nullable(),
})
