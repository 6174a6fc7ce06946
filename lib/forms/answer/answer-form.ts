import { z } from 'zod'
import { isHash } from '../../record/hash'
import { idField, onceField, text } from '../fields'
import { placesField } from './place-keys'

const answering = {
	once: onceField,
	revision: z.string().refine(isHash, 'This form does not say which revision it answers. Open the design again.'),
}

/** Approval: of which revision, which palette, another at which places, with which extras, without which containers. Nothing in it is a price. */
export const approveForm = z.strictObject({
	...answering,
	option: z.string('Choose a palette first.').min(1, 'Choose a palette first.').max(40),
	place: placesField,
	extra: z.array(z.string().max(40)).max(60),
	without: z.array(idField<'container'>()).max(60),
	purchaseOrder: text(40),
})

/** The whole, and as many containers, palettes and extras as a draft may have. */
const mostParts = 1 + 60 + 4 + 20

/** Several notes in one go: the part that each is about, and its words; those left empty are no notes. */
const notes = z.strictObject({
	...answering,
	about: z.array(z.string().max(80)).max(mostParts),
	note: z.array(text(1000, { lines: true })).max(mostParts),
})

const pairedNotes = <T extends z.infer<typeof notes>>({ about, note, ...rest }: T) => ({
	...rest,
	notes: about.map((part, index) => ({ part, words: note[index] ?? '' })).filter(({ words }) => words !== ''),
})

const noNotes = { message: 'Write what you would like to be different.', path: ['note'] }
const hasNotes = (form: { readonly notes: readonly unknown[] }) => form.notes.length > 0

export const changeForm = notes.transform(pairedNotes).refine(hasNotes, noNotes)
export const skipForm = z.strictObject({ ...answering, why: text(500, { lines: true }) })

/** Who said so, of an answer that the studio takes down on the phone, and to which proposal. */
const byPhone = { proposal: idField<'proposal'>(), said: text(80, { min: 1 }) }

export const phoneApproveForm = approveForm.extend(byPhone)
export const phoneChangeForm = notes.extend(byPhone).transform(pairedNotes).refine(hasNotes, noNotes)
export const phoneSkipForm = skipForm.extend(byPhone)
