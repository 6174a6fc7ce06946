import { expect, test } from 'vitest'
import type { Due } from '@/lib/pricing/quote/due'
import { dueInWords } from '@/lib/proposal/offer/due-words'
import { cents } from '@/lib/units/cents'
import { money } from '../sample'

const due = (amount: number, when: Due['when']): Due => ({ cents: cents(amount), when })

test.each<{ due: Due[]; says: string }>([
	{
		due: [due(23_700, { is: 'on approval' }), due(23_682, { is: 'at install' })],
		says: '$237.00 on approval and $236.82 when it is in',
	},
	{ due: [due(51_905, { is: 'after install', days: 15 })], says: '$519.05 within 15 days after it is in' },
	{ due: [due(95_000, { is: 'by agreement' })], says: '$950.00 by the instalments of your agreement' },
	{
		due: [
			due(95_100, { is: 'by agreement' }),
			due(4122, { is: 'on approval' }),
			due(4121, { is: 'after install', days: 30 }),
		],
		says: '$951.00 by the instalments of your agreement, $41.22 on approval and $41.21 within 30 days after it is in',
	},
	{ due: [], says: '' },
])('$says', ({ due: of, says }) => {
	expect(dueInWords(of, money)).toBe(says)
})
