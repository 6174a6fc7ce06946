import fc from 'fast-check'
import Fraction from 'fraction.js'
import { describe, expect, test } from 'vitest'
import { soilLitres } from '@/lib/container/soil'
import { clientForm, colourForm, contactForm, endContactForm, placeForm } from '@/lib/forms/client-forms'
import { containerForm } from '@/lib/forms/places/card-form'
import { read } from '@/lib/forms/read'

const uuid = (n: number) => `00000000-0000-7000-8000-00000000a${String(n).padStart(3, '0')}`
const errorsOf = (result: ReturnType<typeof read>) => (result.ok ? {} : result.errors)

describe('a client', () => {
	const bakery = {
		once: uuid(1),
		client: '',
		kind: 'business',
		name: ' Ninefold Bakery ',
		netDays: '30',
		exemptCertificate: '',
		exemptExpires: '',
		studioNote: '',
	}

	test('new, without a certificate', () => {
		const result = read(clientForm, bakery)
		expect(result.ok && result.value).toMatchObject({
			client: null,
			name: 'Ninefold Bakery',
			netDays: 30,
			exemptCertificate: null,
			exemptExpires: null,
		})
	})

	test('known, exempt until a day', () => {
		const more = { client: uuid(2), exemptCertificate: 'EX-4410', exemptExpires: '2027-06-30', netDays: '15' }
		const result = read(clientForm, { ...bakery, ...more })
		expect(result.ok && result.value).toMatchObject({ ...more, netDays: 15 })
	})

	const both = 'A certificate has a number and a day on which it expires.'
	test.each([
		{ name: 'a certificate without a day', more: { exemptCertificate: 'EX-1' }, says: { exemptExpires: both } },
		{ name: 'a day without a certificate', more: { exemptExpires: '2027-06-29' }, says: { exemptExpires: both } },
		{
			name: 'a day that is none',
			more: { exemptCertificate: 'EX-2', exemptExpires: '2027-06-31' },
			says: { exemptExpires: 'Choose a day of the calendar.' },
		},
		{ name: 'no name', more: { name: ' ' }, says: { name: 'This cannot be left empty.' } },
		{ name: 'no kind', more: { kind: undefined }, says: { kind: 'Choose business or household.' } },
		{ name: 'a forged id', more: { client: '7' }, says: { client: 'This names nothing that is known here.' } },
		{ name: 'other terms', more: { netDays: '90' }, says: { netDays: expect.any(String) } },
		{ name: 'a field of ours', more: { id: uuid(3) }, says: { form: expect.stringContaining('Unrecognized key') } },
	])('refuses $name', ({ more, says }) => {
		expect(errorsOf(read(clientForm, { ...bakery, ...more }))).toEqual(says)
	})
})

describe('a contact', () => {
	const ada = { once: uuid(4), client: uuid(5), name: 'Ada', address: 'Ada@Ninefold.Example ', may: 'approve' }

	test('with an address in small letters', () => {
		const result = read(contactForm, ada)
		expect(result.ok && result.value.address).toBe('ada@ninefold.example')
	})

	test.each([
		{ name: 'nothing that they may do', more: { may: '' }, says: { may: 'Choose what they may do.' } },
		{ name: 'the designer’s rights', more: { may: 'designer' }, says: { may: 'Choose what they may do.' } },
		{
			name: 'two addresses',
			more: { address: 'ada@ninefold.example, b@mill.example' },
			says: { address: 'Give a mail address such as name@example.com.' },
		},
	])('refuses $name', ({ more, says }) => {
		expect(errorsOf(read(contactForm, { ...ada, ...more }))).toEqual(says)
	})

	test('that ends is named by client and contact', () => {
		expect(read(endContactForm, { once: uuid(6), client: uuid(7), contact: uuid(8) }).ok).toBe(true)
		expect(read(endContactForm, { once: uuid(6), client: uuid(7), contact: '' }).ok).toBe(false)
	})
})

describe('a place', () => {
	const quay = {
		once: uuid(9),
		client: uuid(10),
		place: '',
		name: 'Front door',
		address: '4 Quay Lane\nHarbour Town',
		taxPercent: '7.25',
		driveMinutes: '14.5',
		zone: '',
		wallKind: 'clapboard',
		wallHex: '#5F7488',
		doorHex: '',
		hardinessZone: '',
		accessNote: '',
	}

	test('with its tax in thousandths of a per cent', () => {
		const result = read(placeForm, quay)
		expect(result.ok && result.value).toMatchObject({
			place: null,
			taxPercent: 7250,
			driveMinutes: 14.5,
			zone: null,
			wallHex: '#5f7488',
			doorHex: null,
			hardinessZone: null,
		})
	})

	test('at a flat price, with a door', () => {
		const result = read(placeForm, { ...quay, place: uuid(11), zone: '45.50', doorHex: '#24365a' })
		expect(result.ok && result.value).toMatchObject({ place: uuid(11), zone: 4550, doorHex: '#24365a' })
	})

	test('keeps every rate of tax that can be typed, to the thousandth', () => {
		fc.assert(
			fc.property(fc.integer({ min: 0, max: 30_000 }), (milli) => {
				const result = read(placeForm, { ...quay, taxPercent: (milli / 1000).toFixed(3) })
				expect(result.ok && result.value.taxPercent).toBe(milli)
			}),
		)
	})

	// A field that may be left empty says what is wrong with it as any other does.
	test.each([
		{
			name: 'a flat price in words',
			more: { zone: 'free' },
			says: { zone: 'Give an amount such as 12.50, to the cent.' },
		},
		{ name: 'a door by name', more: { doorHex: 'navy' }, says: { doorHex: 'Give a colour such as #5f7488.' } },
		{ name: 'a forged place', more: { place: 'x' }, says: { place: 'This names nothing that is known here.' } },
		{ name: 'tax of a third', more: { taxPercent: '33.333' }, says: { taxPercent: 'Give a number from 0 to 30.' } },
		{ name: 'no wall', more: { wallKind: '' }, says: { wallKind: 'Choose how the wall is made.' } },
	])('refuses $name', ({ more, says }) => {
		expect(errorsOf(read(placeForm, { ...quay, ...more }))).toEqual(says)
	})

	test('has colours, inside and outside', () => {
		const brass = { once: uuid(12), client: uuid(13), place: uuid(14), name: 'Brass', hex: '#bb9346', side: 'outside' }
		expect(read(colourForm, brass)).toEqual({ ok: true, value: brass })
		expect(read(colourForm, { ...brass, side: 'between' }).ok).toBe(false)
	})
})

const urn = {
	once: uuid(15),
	client: uuid(16),
	place: uuid(17),
	container: '',
	name: 'Left urn',
	shape: 'round',
	topCm: '18',
	topDepthCm: '',
	bottomCm: '12',
	bottomDepthCm: '',
	heightCm: '20.5',
	wall: 'terracotta',
	wallCm: '',
	headspaceCm: '',
	soilDepthCm: '',
	hasDrainHole: 'on',
	vesselKg: '31.5',
	colour: '#3a3d40',
	owner: 'client',
	light: 'part',
	sillToGlassCm: '',
	waterer: 'studio',
	stands: 'all round',
	limitedWeight: 'none',
	walkLeftCm: '48',
}
const forms = { in: containerForm('in'), cm: containerForm('cm') }
const inches = (more: Record<string, string> = {}) => read(forms.in, { ...urn, ...more })
const metric = (more: Record<string, string> = {}) => read(forms.cm, { ...urn, ...more })

describe('a container', () => {
	test('measured in inches is kept in centimetres, with what is usual where nothing was measured', () => {
		const result = inches()
		expect(result.ok && result.value).toMatchObject({
			container: null,
			topCm: 45.72,
			bottomCm: 30.48,
			heightCm: 52.07,
			topDepthCm: null,
			wallCm: 2.5,
			headspaceCm: 5,
			soilDepthCm: null,
			walkLeftCm: 121.92,
			vesselKg: 14.288159655,
			hasDrainHole: true,
			hasLiner: false,
			outletNear: false,
		})
	})

	test('measured in centimetres is kept as it was', () => {
		const result = metric({ topCm: '46', wallCm: '0.3', headspaceCm: '4', soilDepthCm: '20.25' })
		const kept = { topCm: 46, bottomCm: 12, heightCm: 20.5, wallCm: 0.3, headspaceCm: 4, soilDepthCm: 20.25 }
		expect(result.ok && result.value).toMatchObject({ ...kept, walkLeftCm: 48 })
	})

	test.each([
		{ name: 'a square of which the front was measured', shape: 'square', more: {}, is: [45.72, 30.48] },
		{ name: 'a pot wider at its bottom', shape: 'column', more: { bottomCm: '20 1/4' }, is: [45.72, 51.435] },
		{
			name: 'a box narrows from front to back as it does along its front',
			shape: 'trough',
			more: { topDepthCm: '9' },
			is: [22.86, 15.24],
		},
		{
			name: 'a box with its own depth',
			shape: 'window box',
			more: { topDepthCm: '8', bottomDepthCm: '7' },
			is: [20.32, 17.78],
		},
		{
			name: 'what is round has no depth, whatever was typed',
			shape: 'urn',
			more: { topDepthCm: '9' },
			is: [null, null],
		},
	])('$name', ({ shape, more, is }) => {
		const result = inches({ shape, ...more })
		expect(result.ok && [result.value.topDepthCm, result.value.bottomDepthCm]).toEqual(is)
	})

	// NIST Handbook 44, Appendix C: an inch is 2.54 cm.
	test('is kept exactly by 2.54 for thousandths of an inch, and to the tenth of a micrometre beyond', () => {
		fc.assert(
			fc.property(fc.integer({ min: 20_000, max: 3_900_000 }), (tenths) => {
				const result = inches({ walkLeftCm: (tenths / 10_000).toFixed(4) })
				const cm = result.ok ? result.value.walkLeftCm : null
				const exact = new Fraction(tenths, 10_000).mul('2.54')
				const off = new Fraction(String(cm)).sub(exact).abs()
				expect(off.lte('0.000005')).toBe(true)
				if (tenths % 10 === 0) expect(off.equals(0)).toBe(true)
			}),
			{ numRuns: 500 },
		)
	})

	const thick = { wallCm: 'The walls are thicker than the pot: nothing would be left inside.' }
	const full = { headspaceCm: 'The space from soil to rim is deeper than the pot: no soil would fit.' }
	test.each([
		{ name: 'walls as thick as the pot', more: { bottomCm: '4', wallCm: '2' }, says: thick },
		{ name: 'walls as usual, and a narrow foot', more: { wall: 'cast stone', bottomCm: '3' }, says: thick },
		{
			name: 'walls as thick as a box is deep',
			more: { shape: 'trough', topDepthCm: '3', bottomDepthCm: '9', wall: 'cast stone' },
			says: thick,
		},
		{
			name: 'walls as thick as a box is deep at its floor',
			more: { shape: 'window box', topDepthCm: '8', bottomDepthCm: '2', wallCm: '1' },
			says: thick,
		},
		{ name: 'no room for soil', more: { heightCm: '6', headspaceCm: '5', wallCm: '1' }, says: full },
		{ name: 'no room with what is usual', more: { heightCm: '2.5', wall: 'wood' }, says: full },
	])('refuses $name', ({ more, says }) => {
		expect(errorsOf(inches(more))).toEqual(says)
	})

	const measure = 'Give a measure such as 18, 18.5 or 18 1/2.'
	const [less, more] = ['less', 'more'].map(
		(which) => `${which} than any container measures: was it typed in another unit?`,
	)
	test.each([
		{ name: 'a pot of nothing', more: { topCm: '0' }, says: { topCm: 'The width at the rim is nothing: measure it.' } },
		{
			name: 'a square of nothing, told once',
			more: { shape: 'square', topCm: '0' },
			says: { topCm: 'The width at the rim is nothing: measure it.' },
		},
		{ name: 'a pot like a house', more: { heightCm: '300' }, says: { heightCm: `The height is ${more}` } },
		{ name: 'a thimble', more: { topCm: '1 1/2' }, says: { topCm: `The width at the rim is ${less}` } },
		{
			name: 'less than nothing',
			more: { bottomCm: '-3' },
			says: { bottomCm: 'The width at the foot cannot be less than nothing.' },
		},
		{ name: 'feet and inches', more: { topCm: `1'6"` }, says: { topCm: measure } },
		{ name: 'a number without end', more: { topCm: '1e400' }, says: { topCm: measure } },
		{ name: 'no number', more: { heightCm: 'NaN' }, says: { heightCm: measure } },
		{ name: 'infinity', more: { headspaceCm: 'Infinity' }, says: { headspaceCm: measure } },
		{ name: 'less than less than nothing', more: { soilDepthCm: '--5' }, says: { soilDepthCm: measure } },
		{ name: 'figures of full width', more: { topCm: '１８' }, says: { topCm: measure } },
		{
			name: 'all that is wrong at once',
			more: { topCm: '0', bottomCm: '-1', heightCm: '999' },
			says: {
				topCm: 'The width at the rim is nothing: measure it.',
				bottomCm: 'The width at the foot cannot be less than nothing.',
				heightCm: `The height is ${more}`,
			},
		},
		{
			name: 'a bowl deeper than half a ball',
			more: { shape: 'bowl', heightCm: '9 1/16' },
			says: { heightCm: 'A bowl is at most half as high as it is wide: call a deeper one a round pot.' },
		},
		{
			name: 'a bowl on a foot as wide as itself',
			more: { shape: 'bowl', heightCm: '8', bottomCm: '18' },
			says: { bottomCm: 'A bowl stands on a foot narrower than its rim.' },
		},
		{
			name: 'more soil than pot',
			more: { soilDepthCm: '21' },
			says: { soilDepthCm: 'The soil cannot be deeper than the pot is high.' },
		},
		{
			name: 'no glass above the sill',
			more: { sillToGlassCm: '0' },
			says: { sillToGlassCm: 'The height from sill to glass is nothing: measure it.' },
		},
		{
			name: 'a depth in words',
			more: { topDepthCm: 'deep' },
			says: { topDepthCm: measure },
		},
		{
			name: 'a depth of nothing',
			more: { bottomDepthCm: '0' },
			says: { bottomDepthCm: 'The depth at the foot is nothing: measure it.' },
		},
		{ name: 'a wall of a foot', more: { wallCm: '12' }, says: { wallCm: `The thickness of the wall is ${more}` } },
		{
			name: 'a sill by a float',
			more: { sillToGlassCm: '1e1' },
			says: { sillToGlassCm: measure },
		},
		{
			name: 'two tons and more',
			more: { vesselKg: '4410' },
			says: { vesselKg: 'Give a weight of at most 4409 lb.' },
		},
		{ name: 'a weight in words', more: { vesselKg: 'heavy' }, says: { vesselKg: 'Give a weight such as 12 or 12.5.' } },
		{ name: 'a price', more: { priceCents: '1' }, says: { form: expect.stringContaining('Unrecognized key') } },
		{ name: 'a tick of another kind', more: { isWindy: 'true' }, says: { isWindy: expect.any(String) } },
	])('refuses $name', ({ more, says }) => {
		expect(errorsOf(inches(more))).toEqual(says)
	})

	test('every card that is taken holds some soil, or none by its false bottom, and never less than none', () => {
		const tenth = (min: number, max: number) => fc.integer({ min: min * 10, max: max * 10 }).map((n) => String(n / 10))
		const measures = fc.record({
			shape: fc.constantFrom('round', 'square', 'rectangular', 'bowl', 'trough', 'window box', 'urn', 'column'),
			wall: fc.constantFrom('metal', 'resin', 'wood', 'terracotta', 'cast stone'),
			topCm: tenth(5, 60),
			topDepthCm: fc.oneof(fc.constant(''), tenth(5, 60)),
			bottomCm: tenth(3, 60),
			bottomDepthCm: fc.oneof(fc.constant(''), tenth(3, 60)),
			heightCm: tenth(5, 60),
			wallCm: fc.oneof(fc.constant(''), tenth(0, 20)),
			headspaceCm: fc.oneof(fc.constant(''), tenth(0, 20)),
			soilDepthCm: fc.oneof(fc.constant(''), tenth(1, 60)),
		})
		fc.assert(
			fc.property(measures, (more) => {
				const result = metric(more)
				if (result.ok) expect(soilLitres(result.value)).toBeGreaterThanOrEqual(0)
				if (result.ok) expect(result.value.wallCm * 2).toBeLessThan(result.value.topDepthCm ?? result.value.topCm)
			}),
			{ numRuns: 1000 },
		)
	})
})
