import { describe, expect, test, vi } from 'vitest'
import { approvedPaper } from '@/app/server/answers/approved-paper'
import { proposalPdf } from '@/app/server/pdf/proposal'
import { stepsOf } from '../../../db/proposals/steps'
import { found, studio } from '../../../db/stage/studio'
import { bare, pagesOf } from '../text'

// The mark of a bundler that has no server side: there is no bundler here.
vi.mock('server-only', () => ({}))

const of = studio()
const { page, steer } = stepsOf(of)
const paperOf = async (key: Parameters<typeof page>[0]) => approvedPaper(await page(key))

describe('what the file of a proposal is drawn from', () => {
	test.each(['approved', 'installed'] as const)('%s: what was approved, by whom and on which day', async (key) => {
		const { answer, offer, hash } = await page(key)
		const { approval, ...rest } = found(await paperOf(key))
		expect(rest).toEqual({ offer, hash, at: answer?.at, paper: 'LETTER' })
		expect(approval).toMatchObject({ option: 'a', reference: answer?.reference, extras: answer?.extras })
		expect(approval.by).toContain(String(answer?.words?.name))
	})

	test('is the same bytes for the same record, with the evening where lights were added', async () => {
		const [first, again] = [found(await paperOf('approved')), found(await paperOf('approved'))]
		const bytes = await proposalPdf(first)
		expect((await proposalPdf(again)).equals(bytes)).toBe(true)
		expect(bare((await pagesOf(bytes)).join(''))).toContain('intheevening.Adrawing,toscale;')
	})

	test.each(['bakery', 'stucco'] as const)('there is none of %s, which was not approved', async (key) => {
		expect(await paperOf(key)).toBeUndefined()
	})

	test.each(['reopen', 'cancel'] as const)('nor once the studio did this to it: %s', async (step) => {
		await steer('approved', step, 'The pot cracked.')
		expect(await paperOf('approved')).toBeUndefined()
	})

	test('it stays when the design went in', async () => {
		const before = await paperOf('approved')
		await steer('approved', 'install')
		expect(await paperOf('approved')).toEqual(before)
	})
})
