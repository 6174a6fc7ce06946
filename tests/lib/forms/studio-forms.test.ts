import { describe, expect, test } from 'vitest'
import { read } from '@/lib/forms/read'
import { endStaffForm, hireForm, settingsForm, setUpForm, timeZones } from '@/lib/forms/studio-forms'

const studio = { name: 'Two Steps Up', timeZone: 'America/New_York', currency: 'USD', lengths: 'in' }
const errorsOf = (more: Record<string, string>) => {
	const result = read(settingsForm, { ...studio, ...more })
	return result.ok ? {} : result.errors
}

describe('the studio’s settings', () => {
	test.each([
		{ name: 'in inches and dollars', more: {} },
		{ name: 'in centimetres and kroner', more: { timeZone: 'Europe/Copenhagen', currency: 'DKK', lengths: 'cm' } },
		{ name: 'by universal time', more: { timeZone: 'UTC' } },
	])('$name', ({ more }) => {
		expect(read(settingsForm, { ...studio, ...more })).toEqual({ ok: true, value: { ...studio, ...more } })
	})

	test.each([
		{
			name: 'a zone of no place',
			more: { timeZone: 'Mars/Base' },
			says: { timeZone: 'Choose a time zone from the list.' },
		},
		{
			name: 'a zone in small letters',
			more: { timeZone: 'america/new_york' },
			says: { timeZone: 'Choose a time zone from the list.' },
		},
		{
			name: 'a currency without cents',
			more: { currency: 'JPY' },
			says: { currency: 'Choose a currency from the list.' },
		},
		{
			name: 'a currency of the language',
			more: { currency: 'toString' },
			says: { currency: 'Choose a currency from the list.' },
		},
		{ name: 'feet', more: { lengths: 'ft' }, says: { lengths: 'Choose inches or centimetres.' } },
		{ name: 'no name', more: { name: '' }, says: { name: 'This cannot be left empty.' } },
		{ name: 'rates', more: { rates: '{}' }, says: { form: expect.stringContaining('Unrecognized key') } },
	])('refuse $name', ({ more, says }) => {
		expect(errorsOf(more)).toEqual(says)
	})

	test('every zone of the list is one that a clock can be read in', () => {
		expect(new Set(timeZones).size).toBe(timeZones.length)
		for (const timeZone of timeZones) expect(() => new Intl.DateTimeFormat('en-US', { timeZone })).not.toThrow()
		expect(timeZones).toContain('America/New_York')
	})

	test('at the first start also say who the designer is', () => {
		const first = { ...studio, designer: 'Mara', address: 'Mara@TwoSteps.Example' }
		expect(read(setUpForm, first)).toEqual({ ok: true, value: { ...first, address: 'mara@twosteps.example' } })
		expect(read(setUpForm, studio).ok).toBe(false)
		expect(read(setUpForm, { ...first, role: 'designer' }).ok).toBe(false)
	})
})

describe('who works here', () => {
	const once = '00000000-0000-7000-8000-00000000d001'
	const perrin = { once, helper: 'Perrin Ashgrove', address: 'Perrin@SedgeAndLantern.Example' }

	test('is let in by name and address, as a helper and nothing else', () => {
		const value = { ...perrin, address: 'perrin@sedgeandlantern.example' }
		expect(read(hireForm, perrin)).toEqual({ ok: true, value })
		expect(read(hireForm, { ...perrin, role: 'designer' }).ok).toBe(false)
		expect(read(hireForm, { ...perrin, helper: ' ' })).toEqual({
			ok: false,
			errors: { helper: 'This cannot be left empty.' },
		})
	})

	test('leaves by id', () => {
		const leaving = { once, member: '00000000-0000-7000-8000-00000000d002' }
		expect(read(endStaffForm, leaving)).toEqual({ ok: true, value: leaving })
		expect(read(endStaffForm, { ...leaving, member: 'perrin' }).ok).toBe(false)
	})
})
