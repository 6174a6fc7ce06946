import { z } from 'zod'
import { dayField, idField, onceField, text, tick } from '../../../forms/fields'
import { hashSchema } from '../../document/document'
import { versionField } from './terms-form'

const named = { once: onceField, agreement: idField<'agreement'>() }

export const beginAgreementForm = z.strictObject({ once: onceField, client: idField<'client'>() })

export const issueForm = z.strictObject({ ...named, version: versionField, signBy: dayField })

export const takeBackForm = z.strictObject(named)

const changed = 'This page has changed meanwhile: load it anew.'

export const remindSignersForm = z.strictObject({
	once: onceField,
	year: z.string().regex(/^2[0-3]\d\d$/, changed),
	again: tick,
})

export const remindSignerForm = z.strictObject({
	...named,
	/** The list from which it was asked, by its year; empty on the agreement's own page. */
	year: z.string().regex(/^(2[0-3]\d\d)?$/, changed),
	again: z
		.literal('yes')
		.optional()
		.transform((value) => value === 'yes'),
})

export const endingForm = z
	.strictObject({
		...named,
		on: dayField,
		saidOn: dayField,
		by: z.enum(['client', 'studio'], 'Say who ends it.'),
		reason: text(300, { min: 1 }),
		step: z.enum(['see', 'end']),
	})
	.transform(({ on, saidOn, by, reason, ...rest }) => ({ ...rest, ending: { on, saidOn, by, reason } }))

export const paperForm = z.strictObject({
	...named,
	document: hashSchema,
	signer: text(120, { min: 1 }),
	signedOn: dayField,
})
