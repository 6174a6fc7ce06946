import { z } from 'zod'
import { dayField, emptyOr, idField, onceField, text, tick } from '../forms/fields'
import type { mostPhotos } from './photo'
import { visitKinds } from './visit'

const place = emptyOr(idField<'place'>())

const written = {
	once: onceField,
	kind: z.enum(visitKinds, 'Choose what kind of visit it is.'),
	place,
	day: emptyOr(dayField),
	came: text(80),
	clientNote: text(1000, { lines: true }),
	studioNote: text(1000, { lines: true }),
	tell: tick,
}

const noDay = { message: 'Choose a day.', path: ['day'] }

/** A visit that the studio plans or writes down of its own accord. */
export const newVisitForm = z
	.strictObject({
		...written,
		season: idField<'season'>(),
		do: z.enum(['plan', 'record'], 'Plan it or write it down.'),
	})
	.refine(({ day }) => day !== null, noDay)

/** A visit that is there: planned, written down or dropped, by the button that was pressed. */
export const visitForm = z
	.strictObject({
		...written,
		do: z.enum(['plan', 'record', 'drop'], 'Plan it, write it down or drop it.'),
		out: z.array(idField<'photo'>()).max(200),
	})
	.refine(({ day, do: step }) => step === 'drop' || day !== null, noDay)

/** What a client says is wrong. */
export const wrongForm = z.strictObject({
	once: onceField,
	place,
	words: text(1000, { min: 1, lines: true }),
})

export const tooManyPhotos = (most: (typeof mostPhotos)[keyof typeof mostPhotos]): string =>
	`That is more than ${most} photos. Choose up to ${most}; the rest can follow afterwards.`
