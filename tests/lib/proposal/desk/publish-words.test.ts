import { expect, test } from 'vitest'
import { publishWords, type Recipient } from '@/lib/proposal/desk/publish-words'
import { day } from '@/lib/units/day'

const maud: Recipient = { name: 'Maud', may: 'approve' }
const pia: Recipient = { name: 'Pia', may: 'look' }
const hew: Recipient = { name: 'Hew', may: 'approve' }
const answerBy = day('2026-10-30')
const well = { name: 'Copper and plum', margin: '52.3 %', mend: [] }
const thin = { name: 'Brass and navy', margin: '38.6 %', mend: ['38.6 % is below your floor of 45 %.'] }

test.each([
	{
		name: 'who may answer first, then who may look',
		of: { recipients: [maud, pia, hew], answerBy, options: [well] },
		says: 'Goes by mail to Maud and Hew (may answer) and Pia (may look). Answer by Friday 30 October. Margin 52.3 %.',
	},
	{
		name: 'each palette by its name, and what is under the floor',
		of: { recipients: [hew], answerBy, options: [well, thin] },
		says: 'Goes by mail to Hew (may answer). Answer by Friday 30 October. Copper and plum: margin 52.3 %. Brass and navy: margin 38.6 %, under your floor.',
	},
	{
		name: 'no day while there is none',
		of: { recipients: [maud], answerBy: null, options: [thin] },
		says: 'Goes by mail to Maud (may answer). Margin 38.6 %, under your floor.',
	},
])('$name', ({ of, says }) => {
	expect(publishWords(of)).toBe(says)
})
