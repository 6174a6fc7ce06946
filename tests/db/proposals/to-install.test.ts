import { describe, expect, test } from 'vitest'
import { approve } from '@/db/proposals/answers/approve'
import { toInstall } from '@/db/proposals/to-install'
import { must } from '@/demo/play/must'
import { found, studio } from '../stage/studio'
import { stepsOf } from './steps'

const of = studio()
const { answering, page, steer } = stepsOf(of)

const sheet = async () => found(await toInstall(await of.as('helper')))

/** Every word and number in it, with the keys under which they stand. */
function leaves(value: unknown, path = ''): [string, unknown][] {
	if (typeof value !== 'object' || value === null) return [[path, value]]
	return Object.entries(value).flatMap(([key, each]) => leaves(each, `${path}.${key}`))
}

describe('what is to go in', () => {
	test('is what was approved and is not in yet, by client', async () => {
		expect((await sheet()).map(({ client, palette }) => [client, palette])).toEqual([
			['The Brackwater household', 'Bone and charcoal'],
			['Wrenholt Harbour Credit Union', 'Brass and navy'],
		])
	})

	test('by place, with how one gets in, and pot by pot what goes in', async () => {
		const union = found((await sheet())[1])
		expect(union.places.map(({ pots }) => pots.map(({ name }) => name))).toEqual([
			['Left of the doors', 'Right of the doors', 'Lower step, left', 'Lower step, right'],
			['Branch door, left', 'Branch door, right'],
		])
		for (const { access, pots } of union.places) {
			expect(access).not.toBe('')
			for (const { lines } of pots) expect(lines.length).toBeGreaterThan(3)
		}
		expect(union.extras).toEqual([])
		expect((await sheet())[0]?.extras).toMatchObject([{ name: 'Two strings of warm lights' }])
	})

	test('without what was left out, in the palette that was chosen', async () => {
		const { bakeryRight, fieldstonePorch } = of.cast().containers
		const bakery = { option: 'a', places: {}, extras: ['lights', 'refresh'], leftOut: [bakeryRight], purchaseOrder: '' }
		const fieldstone = { option: 'c', places: {}, extras: [], leftOut: [fieldstonePorch], purchaseOrder: '' }
		must(
			'bakery',
			await approve(await of.as('bakeryApprover'), { ...(await answering('bakery')), ...bakery }, of.stamp()),
		)
		must(
			'fieldstone',
			await approve(
				await of.as('fieldstoneApprover'),
				{ ...(await answering('fieldstone')), ...fieldstone },
				of.stamp(),
			),
		)
		const sheets = new Map((await sheet()).map((each) => [each.client, each]))
		const [shop, pier] = [found(sheets.get('Marrowby Bakery')), found(sheets.get('The Pellwick household'))]
		expect(shop.places.flatMap(({ pots }) => pots.map(({ name }) => name))).toEqual(['Left of the door', 'Window box'])
		expect(shop.extras).toHaveLength(2)
		expect(pier.palette).toBe('Frost and violet')
		expect(pier.places.flatMap(({ pots }) => pots.map(({ name }) => name))).toEqual([
			'Urn on the pier',
			'Tub at the boathouse',
		])
		const frozen = found((await page('fieldstone')).offer?.options.find(({ key }) => key === 'c'))
		expect(pier.places[0]?.pots[0]?.lines).toEqual(frozen.pots[0]?.lines)
	})

	test('each place in the palette that it took', async () => {
		const { fieldstoneBoathouse } = of.cast().places
		const taken = { option: 'a', places: { [fieldstoneBoathouse]: 'c' }, extras: [], leftOut: [], purchaseOrder: '' }
		const answer = { ...(await answering('fieldstone')), ...taken }
		must('fieldstone', await approve(await of.as('fieldstoneApprover'), answer, of.stamp()))
		const pier = found((await sheet()).find(({ client }) => client === 'The Pellwick household'))
		expect(pier.palette).toBe('Rust and moss; Frost and violet at Boathouse')
		const options = found((await page('fieldstone')).offer).options
		const potsOf = (key: string) => options.find((each) => each.key === key)?.pots.map(({ lines }) => lines)
		expect(pier.places.flatMap(({ pots }) => pots.map(({ lines }) => lines))).toEqual([
			...(potsOf('a')?.slice(0, 2) ?? []),
			...(potsOf('c')?.slice(2) ?? []),
		])
	})

	test('leaves the sheet when it is in, opened anew or cancelled', async () => {
		await steer('approved', 'install')
		await steer('creditUnion', 'reopen')
		expect(await sheet()).toEqual([])
	})

	test('names no price anywhere', async () => {
		const designer = found(await toInstall(await of.as('designer')))
		expect(designer).toEqual(await sheet())
		const all = leaves(designer)
		expect(all.length).toBeGreaterThan(200)
		expect(all.filter(([path]) => /cent|price|cost|margin|tax|total|due|rate|split|bill/i.test(path))).toEqual([])
		expect(all.filter(([, value]) => typeof value === 'string' && /[$€£]|\d\.\d\d\b/.test(value))).toEqual([])
		const numbers = all.filter(([, value]) => typeof value === 'number').map(([path]) => path.split('.').at(-1))
		expect(new Set(numbers)).toEqual(new Set(['count', 'acrossCm', 'lengthCm', 'pieces']))
	})

	test.each(['bakeryApprover', 'bakeryViewer', 'nobody', 'system'] as const)('is not there for %s', async (who) => {
		expect(await toInstall(await of.as(who))).toBeUndefined()
	})
})
