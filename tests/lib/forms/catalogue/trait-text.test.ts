import { expect, test } from 'vitest'
import { z } from 'zod'
import { traitFields } from '@/lib/forms/catalogue/trait-fields'
import { keptTraits, traitText } from '@/lib/forms/catalogue/trait-text'
import { hex } from '@/lib/units/hex'

const holly = {
	form: 'berries',
	secondHex: hex('#5d5148'),
	lengthCm: 60.96,
	acrossCm: 17.78,
	hadFrom: 10,
	hadTo: 12,
	lastsFrom: 11,
	lastsTo: 2,
	zone: 3.5,
	needs: 'sun or part',
	spacingCm: null,
	rootBallLitres: 3.8,
	kgEach: 0.09,
	watts: null,
	mostEndToEnd: null,
	regulated: 'invasive in two states',
} as const

test.each(['in', 'cm'] as const)('the traits of a material come back as they were, in %s', (unit) => {
	const back = z.strictObject(traitFields(unit)).parse(traitText(holly, unit))
	expect(keptTraits(back, holly, unit)).toEqual(holly)
	const bare = {
		...holly,
		secondHex: null,
		lengthCm: null,
		acrossCm: null,
		zone: null,
		rootBallLitres: null,
		kgEach: null,
	}
	expect(z.strictObject(traitFields(unit)).parse(traitText(bare, unit))).toEqual(bare)
})

test('a piece is weighed in pounds or kilograms, and in ounces or grams by name', () => {
	const kgEach = (typed: string, unit: 'in' | 'cm') =>
		z.strictObject(traitFields(unit)).parse({ ...traitText(holly, unit), kgEach: typed }).kgEach
	expect(traitText(holly, 'in')).toMatchObject({ kgEach: '0.198' })
	expect(traitText(holly, 'cm')).toMatchObject({ kgEach: '0.09' })
	expect([kgEach('2', 'in'), kgEach('2', 'cm'), kgEach('8 oz', 'in'), kgEach('', 'in')]).toEqual([
		0.90718474,
		2,
		0.226796185,
		null,
	])
})

test('a material that nobody has described does well all year', () => {
	expect(traitText(null, 'in')).toMatchObject({
		hadFrom: '1',
		hadTo: '12',
		lastsFrom: '1',
		lastsTo: '12',
		needs: 'any',
	})
})

test('a card that was measured in centimetres is kept as it was when it is saved in inches', () => {
	const metric = { ...holly, lengthCm: 61, acrossCm: 18.5, kgEach: 0.085 }
	const saved = z.strictObject(traitFields('in')).parse({ ...traitText(metric, 'in'), spacingCm: '6' })
	expect(saved.lengthCm).not.toBe(61)
	expect(saved.kgEach).not.toBe(0.085)
	expect(keptTraits(saved, metric, 'in')).toEqual({ ...metric, spacingCm: 15.24 })
	expect(keptTraits(saved, null, 'in')).toEqual(saved)
})
