import { z } from 'zod'
import { quarters } from '../season/season'
import { amountField, dayField, emptyOr, idField, onceField, text, tick } from './fields'

export const planForm = z
	.strictObject({
		once: onceField,
		quarter: z.enum(quarters, 'Choose a season.'),
		year: z
			.string()
			.regex(/^20\d\d$/, 'Give a year such as 2026.')
			.transform(Number),
		answerBy: dayField,
		windowFrom: dayField,
		windowTo: dayField,
	})
	.refine(({ windowFrom, windowTo }) => windowFrom <= windowTo, {
		message: 'It would end before it begins.',
		path: ['windowTo'],
	})
	.refine(({ answerBy, windowFrom }) => answerBy <= windowFrom, {
		message: 'Answers would come after the first install.',
		path: ['answerBy'],
	})

export const beginForm = z.strictObject({ once: onceField, client: idField<'client'>(), season: idField<'season'>() })

export const remindAllForm = z.strictObject({ once: onceField, season: idField<'season'>(), again: tick })

/** As many drafts as are published at once. */
const mostPicked = 500

/** A draft that was ticked: "<proposal>.<version>", the version that the list showed. */
const pickField = z
	.string()
	.regex(/^[^.]{36}\.\d{1,9}$/, 'This names no draft.')
	.transform((value) => ({ proposal: value.slice(0, 36), version: Number(value.slice(37)) }))
	.pipe(z.strictObject({ proposal: idField<'proposal'>(), version: z.int() }))

export const publishPickedForm = z.strictObject({
	once: onceField,
	pick: z
		.array(pickField)
		.min(1, 'Tick the drafts that are to be published.')
		.max(mostPicked, `Publish at most ${mostPicked} at once.`),
})

export const remindForm = z.strictObject({
	once: onceField,
	proposal: idField<'proposal'>(),
	season: idField<'season'>(),
	page: z
		.string()
		.regex(/^\d{1,5}$/)
		.transform(Number),
	/** What the page showed, so that it shows the same again. */
	ask: text(400).optional(),
	again: z
		.literal('yes')
		.optional()
		.transform((value) => value === 'yes'),
})

export const publishForm = z.strictObject({
	once: onceField,
	proposal: idField<'proposal'>(),
	version: z
		.string()
		.regex(/^\d{1,9}$/, 'Open the proposal again.')
		.transform(Number),
})

/** To take back an approval needs a reason that can be read later. */
export const steerForm = z
	.strictObject({
		once: onceField,
		proposal: idField<'proposal'>(),
		step: z.enum(['withdraw', 'reopen', 'cancel', 'install']),
		reason: text(500, { lines: true }),
		/** What remains due; asked for where an approval is cancelled. */
		remains: emptyOr(amountField),
	})
	.refine(({ step, remains }) => step !== 'cancel' || remains !== null, {
		message: 'Say what remains due: 0 where nothing does.',
		path: ['remains'],
	})
	.refine(({ step, reason }) => reason !== '' || (step !== 'reopen' && step !== 'cancel'), {
		message: 'Say why: the reason is kept in the record.',
		path: ['reason'],
	})
