import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { rateFields } from '@/lib/forms/rates/rate-table'
import { ratesForm, ratesText, saveRatesForm } from '@/lib/forms/rates/rates-form'
import { defaultRates, ratesSchema } from '@/lib/pricing/rates'

/** What a browser sends: a box that is not ticked is absent. */
const sent = (texts: Readonly<Record<string, string>>) =>
	Object.fromEntries(Object.entries(texts).filter(([, text]) => text !== ''))
const standing = () => sent(ratesText(defaultRates))

describe('the form of the rates', () => {
	test('shows every number of them, and reads back what it shows', () => {
		expect(ratesForm.parse(standing())).toEqual(defaultRates)
		expect(ratesText(defaultRates)).toMatchObject({
			billedCentsPerHour: '60.00',
			'lossPercent.fresh': '10',
			'pieceMinutes.green': '0.4',
			'tax.taxable.labour': '',
			'tax.basis': 'invoice',
		})
	})

	test('reads back any rates that the studio can have', () => {
		const cents = fc.integer({ min: 1, max: 99_999 })
		const thousandth = (most: number) => fc.integer({ min: 0, max: most * 1000 }).map((value) => value / 1000)
		const rates = fc
			.tuple(cents, cents, thousandth(100), thousandth(20), fc.integer({ min: 1, max: 6 }), fc.boolean())
			.map(([billed, step, loss, markup, crew, isTaxed]) =>
				ratesSchema.parse({
					...defaultRates,
					billedCentsPerHour: billed,
					presentationStepCents: step,
					lossPercent: { ...defaultRates.lossPercent, live: loss },
					markup: { ...defaultRates.markup, light: markup },
					crew,
					tax: { ...defaultRates.tax, taxable: { ...defaultRates.tax.taxable, labour: isTaxed } },
				}),
			)
		fc.assert(
			fc.property(rates, (each) => {
				expect(ratesForm.parse(sent(ratesText(each)))).toEqual(each)
			}),
		)
	})

	test('takes no field away and adds none', () => {
		for (const { at } of rateFields) {
			const { [at]: _, ...rest } = standing()
			expect(ratesForm.safeParse(rest).success).toBe(false)
		}
		expect(ratesForm.safeParse({ ...standing(), discount: '5' }).success).toBe(false)
	})

	test('says beside the number what is wrong with it', () => {
		const once = '00000000-0000-7000-8000-00000000a001'
		const read = saveRatesForm.safeParse({ ...standing(), once, version: '1', step: 'save', crew: '2.5', burden: '9' })
		expect(read.error?.issues.map(({ path, message }) => [path.join('.'), message])).toEqual([
			['burden', 'Give a number from 0 to 5.'],
			['crew', 'Give a whole number.'],
		])
	})
})
