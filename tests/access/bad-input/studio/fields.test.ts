import { describe, expect, it } from 'vitest'
import { withField } from '../../ask/forms'
import { placeOf } from '../../ask/outcome'
import { inParallel } from '../../ask/send'
import { aliveIn, type Hostile, isStored } from '../../look/hostile'
import { open } from '../../site/here'
import { snapshot, snapshotAtRest } from '../../site/snapshot'
import { again, fill } from './fill'
import { cases, valuesFor } from './forms'
import { unsaid } from './unsaid'

async function refusesAll(form: string, field: string, values: readonly Hostile[]): Promise<void> {
	const before = await snapshotAtRest(open.site.folder)
	const wrong: string[] = []
	await inParallel(values, 6, async ({ what, value }) => {
		const answer = await fill(form, (fields) => withField(fields, field, value))
		const why = await unsaid(form, field, answer, value)
		if (why !== null) wrong.push(`${what}: ${why}`)
	})
	expect(wrong.toSorted()).toEqual([])
	expect(snapshot(open.site.folder)).toEqual(before)
}

describe('refuses what the field is not for, says so, and changes nothing', () => {
	it.each(cases)('$form, $field', async (each) => {
		const refused = valuesFor(each).filter((value) => !isStored(each.kind, value))
		await refusesAll(each.form, each.field, refused)
	})
})

describe('keeps what is text and shows it as text', () => {
	it.each(cases.filter(({ kind }) => kind === 'words' || kind === 'lines'))('$form, $field', async (each) => {
		const { form, field, kind } = each
		for (const { what, value } of valuesFor(each).filter((value) => isStored(kind, value))) {
			await again(form)
			const before = await snapshotAtRest(open.site.folder)
			const answer = await fill(form, (fields) => withField(fields, field, value))
			const page = await open.ask('designer', placeOf(answer))
			const found = [what, answer.status, placeOf(answer).includes('form='), page.status, aliveIn(page.body)]
			expect(found).toEqual([what, 303, false, 200, []])
			expect(snapshot(open.site.folder)).not.toEqual(before)
		}
	})
})

describe('figures at their bounds', () => {
	const at = async (form: string, field: string, value: string) => {
		const answer = await fill(form, (fields) => withField(fields, field, value))
		return answer.status === 303 && !placeOf(answer).includes('form=')
			? 'kept'
			: answer.status === 303
				? 'refused'
				: answer.status
	}
	it.each([
		['saveMaterial', 'size', ['0.01', '100000'], ['0', '0.000', '100000.001', '0.0001']],
		[
			'saveMaterial',
			'price',
			['0', '0.01', '100000', '100000.00', '12.5'],
			['100000.01', '9999999.99', '12.505', '.5', '1.', '$5', '1,000'],
		],
		['saveMaterial', 'piecesPerUnit', ['0.001', '10000'], ['0', '10000.001']],
		['saveMaterial', 'freightPercent', ['0', '100', '4.125'], ['100.001']],
		['savePlace', 'taxPercent', ['0', '30', '8.875'], ['30.001', '6.6255']],
		['savePlace', 'driveMinutes', ['0', '600'], ['600.001']],
		['savePlace', 'zone', ['', '0', '100000'], ['100000.01', '9999999.99']],
		['saveContainer', 'topCm', ['2', '393'], ['1.9', '394', '0']],
		['saveContainer', 'heightCm', ['196'], ['197', '1']],
		['saveContainer', 'wallCm', ['0', '6.9'], ['7', '8']],
		['saveContainer', 'headspaceCm', ['0', '18'], ['19.7', '20']],
		['saveContainer', 'walkLeftCm', ['48 1/2', '48½', '7/16', '48"', '120 cm', '48.0625'], ['788', '0.00001']],
		['saveMaterial', 'lengthCm', ['', '18 9/16', '46 cm', '393'], ['0', '394', '-4']],
		['saveContainer', 'vesselKg', ['0', '2000 kg', '4409.245'], ['2000.001 kg', '4409.246']],
		['saveMaterial', 'kgEach', ['', '0', '3 oz', '90 g', '500 kg'], ['500.001 kg', '-1', '3 stone']],
		['keepStock', 'quantity', ['0', '12.125', '100000'], ['100000.001', '0.0001']],
		['keepStock', 'usesBefore', ['0', '100'], ['101', '1.5']],
		['saveSupplier', 'leadDays', ['0', '365'], ['366', '0.5']],
		['saveRecipe', 'count', ['0.001', '9999'], ['0', '9999.001']],
		['saveRecipe', 'at', ['0', '999', '1.5'], ['999.001']],
		['plan', 'year', [], ['1999', '2100', '20311', '31']],
		['remind', 'page', ['0', '99999'], ['100000']],
	] as const)('%s, %s', async (form, field, kept, refused) => {
		const found = [...kept, ...refused].map(async (value) => [value, await at(form, field, value)] as const)
		const wanted = [...kept.map((value) => [value, 'kept']), ...refused.map((value) => [value, 'refused'])]
		expect(await Promise.all(found)).toEqual(wanted)
	})

	it('a day that the calendar has not, dates out of order, half a certificate', async () => {
		for (const value of ['2031-02-29', '2031-13-01', '31-01-01', '2031-1-1', 'tomorrow', '+002031-01-01'])
			expect([value, await at('plan', 'windowTo', value)]).toEqual([value, 'refused'])
		expect(await at('plan', 'windowTo', '2031-02-28')).toBe('refused')
		expect(await at('plan', 'answerBy', '2031-03-02')).toBe('refused')
		expect(await at('saveClient', 'exemptExpires', '')).toBe('refused')
		expect(await at('saveClient', 'exemptCertificate', '')).toBe('refused')
	})
})
