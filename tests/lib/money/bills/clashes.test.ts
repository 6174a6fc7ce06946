import { describe, expect, test } from 'vitest'
import { clashes, type SeasonApproved, type SeasonsAgreed } from '@/lib/money/bills/clashes'
import { clashInWords } from '@/lib/money/words/bill'
import { day } from '@/lib/units/day'
import { agreementId, proposalId } from '../sample'

const winter = { quarter: 'winter', year: 2026 } as const
const spring = { quarter: 'spring', year: 2027 } as const
const approved = (isByAgreement: boolean, approvedOn = '2026-10-09'): SeasonApproved => ({
	...{ proposal: proposalId(1), season: winter, isByAgreement },
	approvedOn: day(approvedOn),
})
const agreed = (n: number, endedOn: string | null, ...seasons: SeasonsAgreed['seasons']): SeasonsAgreed => ({
	agreement: agreementId(n),
	seasons,
	endedOn: endedOn === null ? null : day(endedOn),
})
const both = [{ is: 'billed by both', season: winter }]
const neither = [{ is: 'billed by neither', season: winter }]

describe('a season that would be billed twice or by nobody', () => {
	test.each([
		{ name: 'its proposal alone', found: clashes([approved(false)], []), is: [] },
		{ name: 'its agreement', found: clashes([approved(true)], [agreed(1, null, spring, winter)]), is: [] },
		{ name: 'both', found: clashes([approved(false)], [agreed(1, null, winter)]), is: both },
		{
			name: 'an agreement of another season',
			found: clashes([approved(true)], [agreed(1, null, spring)]),
			is: neither,
		},
		{
			name: 'approved on the day of the end',
			found: clashes([approved(true)], [agreed(1, '2026-10-09', winter)]),
			is: [],
		},
		{
			name: 'approved the day after the end',
			found: clashes([approved(true, '2026-10-10')], [agreed(1, '2026-10-09', winter)]),
			is: neither,
		},
		{
			name: 'priced anew after the end',
			found: clashes([approved(false, '2026-10-10')], [agreed(1, '2026-10-09', winter)]),
			is: [],
		},
		{
			name: 'two agreements',
			found: clashes([], [agreed(1, null, winter), agreed(2, null, winter, spring)]),
			is: [{ is: 'billed by two agreements', season: winter }],
		},
		{
			name: 'one that took the place of another',
			found: clashes([], [agreed(1, '2026-09-01', winter), agreed(2, null, winter)]),
			is: [],
		},
	])('$name', ({ found, is }) => {
		expect(found).toEqual(is)
	})

	test('is told with what would mend it', () => {
		expect(both.map((each) => clashInWords({ ...each, is: 'billed by both' }))).toEqual([
			'Winter 2026–27 would be billed twice, by the agreement and by its proposal. Open the proposal again, or leave the season out of the agreement.',
		])
	})
})
