import { describe, expect, test } from 'vitest'
import { type AnswerRefusal, isRefusal, refusalInWords, standsInWords } from '@/lib/proposal/offer/told'
import type { State } from '@/lib/proposal/state'
import { sha256 } from '@/lib/record/hash'
import { day } from '@/lib/units/day'

// Complete by the compiler: a refusal that is added has to be added here.
const refusals: Record<AnswerRefusal, RegExp> = {
	'not published yet': /being revised/,
	'a newer revision stands': /was revised while you were reading.*not taken/,
	'already approved': /approved a moment before.*not taken/,
	'already skipped': /skipped a moment before.*not taken/,
	'a change was asked for': /change had been asked for.*not taken/,
	lapsed: /has passed.*not taken/,
	withdrawn: /taken this proposal back.*not taken/,
	cancelled: /has been cancelled.*not taken/,
	installed: /is in already.*not taken/,
	'not approved': /has not been approved/,
	'nothing to withdraw': /nothing to take back/,
	'more than was approved': /cannot remain due/,
	'that palette is not offered': /palette is not offered.*not taken/,
	'that extra is not offered': /extras is not offered.*not taken/,
	'that place is not in the design': /place that is not in this design.*not taken/,
	'that palette belongs where everything is left out': /palettes is for a place where every container.*not taken/,
	'that container may not be left out': /cannot be left out.*not taken/,
	'that part is not in the design': /not in this design.*Nothing was sent/,
	'nothing would be left': /Nothing would be left.*not taken/,
	'that extra belongs where everything is left out': /every container is left out.*not taken/,
	'sent before': /sent before.*Nothing was changed/,
	'billed by the agreement': /asks for this season already.*was not taken: write to us/,
	erased: /has been erased/,
}
const all = Object.entries(refusals)

describe('a refusal', () => {
	test.each(all)('“%s” is told in whole sentences', (why, says) => {
		expect(isRefusal(why)).toBe(true)
		const words = isRefusal(why) ? refusalInWords(why) : ''
		expect(words).toMatch(says)
		expect(words).toMatch(/^[A-Z].*\.$/)
	})

	test('each in words of its own', () => {
		const words = all.map(([why]) => (isRefusal(why) ? refusalInWords(why) : ''))
		expect(new Set(words).size).toBe(all.length)
	})

	test.each(['', 'approved', 'LAPSED', 'toString', '__proto__', '<b>x</b>'])('“%s” is none', (text) => {
		expect(isRefusal(text)).toBe(false)
	})
})

const revision = sha256('two')
const answerBy = day('2026-10-30')
const given = { on: day('2026-10-12'), by: 'by Ada', reference: 'W26-0007', purchaseOrder: '' }

describe('how a proposal stands', () => {
	test.each<{ state: State; says: string | null; answered: string | null }>([
		{ state: { is: 'waiting for an answer', revision, answerBy }, says: null, answered: null },
		{
			state: { is: 'drafting' },
			says: 'We are revising this design. A new revision will follow; there is nothing to do until then.',
			answered: 'We are revising this design. A new revision will follow; there is nothing to do until then.',
		},
		{
			state: { is: 'change asked for', revision },
			says: 'A change was asked for. We are revising the design.',
			answered: 'A change was asked for on 12 October 2026 by Ada, reference W26-0007. We are revising the design.',
		},
		{
			state: { is: 'approved', revision },
			says: 'Approved.',
			answered: 'Approved on 12 October 2026 by Ada, reference W26-0007.',
		},
		{
			state: { is: 'installed', revision },
			says: 'This design is in.',
			answered: 'Approved on 12 October 2026 by Ada, reference W26-0007, and in.',
		},
		{
			state: { is: 'skipped', revision },
			says: 'This season was skipped.',
			answered: 'This season was skipped on 12 October 2026 by Ada, reference W26-0007.',
		},
		{
			state: { is: 'cancelled', revision },
			says: 'This season has been cancelled: nothing of it goes in.',
			answered: 'This season has been cancelled: nothing of it goes in.',
		},
		{
			state: { is: 'withdrawn', revision },
			says: 'We have taken this proposal back. There is nothing to answer.',
			answered: 'We have taken this proposal back. There is nothing to answer.',
		},
		{
			state: { is: 'lapsed', revision, answerBy },
			says: 'The day to answer by, Friday 30 October, has passed. Write to us if you would still like it.',
			answered: 'The day to answer by, Friday 30 October, has passed. Write to us if you would still like it.',
		},
	])('$state.is', ({ state, says, answered }) => {
		expect(standsInWords(state, undefined)).toBe(says)
		expect(standsInWords(state, given)).toBe(answered)
	})
})
