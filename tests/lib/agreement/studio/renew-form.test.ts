import { describe, expect, test } from 'vitest'
import { renewAskAgain, renewAskText } from '@/lib/agreement/studio/form/renew-ask-text'
import { priceBox, renewalAsk, renewalOf, renewForm } from '@/lib/agreement/studio/form/renew-form'
import { read } from '@/lib/forms/read'
import { agreementId } from '../sample'

const winter = { quarter: 'winter', year: 2027 } as const

describe('what is asked in the address', () => {
	test.each([
		['nothing', {}, { rise: { is: 'percent', percent: 0 }, stepCents: 500, adjusted: [] }],
		[
			'4 % to fives',
			{ by: 'percent', rise: '4' },
			{ rise: { is: 'percent', percent: 4 }, stepCents: 500, adjusted: [] },
		],
		[
			'less by an amount',
			{ by: 'amount', rise: '-12.5', step: '1' },
			{ rise: { is: 'amount', cents: -1250 }, stepCents: 1, adjusted: [] },
		],
		[
			'more than there can be',
			{ by: 'percent', rise: '900' },
			{ rise: { is: 'percent', percent: 0 }, stepCents: 500, adjusted: [] },
		],
		[
			'nonsense',
			{ by: 'luck', rise: '1e9', step: '7' },
			{ rise: { is: 'percent', percent: 0 }, stepCents: 500, adjusted: [] },
		],
	])('%s', (_, given, renewal) => {
		expect(renewalOf(renewalAsk(given))).toEqual(renewal)
	})

	test('rides along with the form and leads back to the same page', () => {
		const text = renewAskText(renewalAsk({ year: '2027', by: 'amount', rise: '-12.5', step: '100' }))
		expect(text).toBe('year=2027&by=amount&rise=-12.5&step=100')
		expect(renewAskAgain(text)).toBe(text)
	})

	test.each([undefined, ['year=2027'], 'year=2027&to=//elsewhere.example', '\r\nyear=1'])(
		'%j leads nowhere else than to the page',
		(sent) => {
			expect(renewAskAgain(sent)).toMatch(/^(year=2027&)?by=percent&rise=0&step=500$/)
		},
	)
})

describe('what is sent', () => {
	const form = {
		once: agreementId,
		signBy: '2027-11-20',
		pick: [agreementId],
		[priceBox(agreementId, winter)]: '650.00',
	}

	test('renews each season at the price in its box', () => {
		const filled = read(renewForm, form)
		expect(filled.ok && filled.value.renewalOf(agreementId).adjusted).toEqual([{ season: winter, cents: 65_000 }])
	})

	test.each([
		['a negative price', { [priceBox(agreementId, winter)]: '-1' }, priceBox(agreementId, winter)],
		['no price', { [priceBox(agreementId, winter)]: '0' }, priceBox(agreementId, winter)],
		['nothing ticked', { pick: [] }, 'pick'],
		['what is no id', { pick: ['all'] }, 'pick.0'],
		['no day', { signBy: '' }, 'signBy'],
		['a box that is none of the form', { cost: '1' }, 'form'],
	])('is refused with %s', (_, change, at) => {
		const filled = read(renewForm, { ...form, ...change })
		expect(Object.keys(filled.ok ? {} : filled.errors)).toEqual([at])
	})
})
