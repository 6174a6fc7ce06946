import { z } from 'zod'
import { strokeField } from '../../agreement/signing/stroke-text'
import { isHash } from '../../record/hash'
import { onceField, text } from '../fields'

const unsaid = 'This form does not say which agreement it is about. Open the agreement again.'
const answering = { once: onceField, document: z.string(unsaid).refine(isHash, unsaid) }

export const consentForm = z.strictObject({
	...answering,
	words: z.string(unsaid).refine(isHash, unsaid),
	agrees: z.literal('on', 'Tick the box if you agree. If you would rather have paper, write to us.'),
})

export const signForm = z.strictObject({ ...answering, name: text(120, { min: 1 }), stroke: strokeField })

export const declineForm = z.strictObject({ ...answering, reason: text(500, { min: 1, lines: true }) })
