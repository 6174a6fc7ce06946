import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { boxesOf, containerNumbers, kerbParts } from '@/lib/forms/places/kerb-fields'
import { kerbForm } from '@/lib/forms/places/kerb-form'
import { read, type Typed } from '@/lib/forms/read'

const uuid = (n: number) => `01999999-0000-7000-8000-${String(n).padStart(12, '0')}`

const gate: Typed = {
	once: uuid(1),
	place: '',
	'new.name': 'Garden gate',
	'new.address': '9 Cooper’s Lane\nWrenholt',
	'new.taxPercent': '6.625',
	'new.driveMinutes': '14',
	'new.wallKind': 'brick',
	'new.wallHex': '#8a4a3a',
	'new.accessNote': '',
}

const pot = (number: number, more: Readonly<Record<string, string>> = {}): Typed => {
	const boxes = {
		name: 'Left of the gate',
		shape: 'round',
		wall: 'terracotta',
		colour: '#7a3a2e',
		owner: 'client',
		topCm: '18 1/2',
		topDepthCm: '',
		bottomCm: '14',
		bottomDepthCm: '',
		heightCm: '46 cm',
		sillToGlassCm: '',
		light: 'shade',
		outletNear: 'on',
		waterer: 'studio',
		stands: 'against a wall',
		limitedWeight: 'none',
		walkLeftCm: '',
		...more,
	}
	return Object.fromEntries(Object.entries(boxes).map(([name, value]) => [`container.${number}.${name}`, value]))
}

const sent = (typed: Typed) => read(kerbForm('in'), kerbParts(typed))
const wrong = (typed: Typed) => {
	const said = sent(typed)
	return said.ok ? {} : said.errors
}

describe('what is written down at the kerb', () => {
	test('is a new place with the containers that stand there', () => {
		const said = sent({ ...gate, ...pot(1), ...pot(4, { name: 'Sill', shape: 'window box', sillToGlassCm: '7 1/4' }) })
		expect(said.ok && said.value).toMatchObject({
			place: null,
			new: { name: 'Garden gate', taxMilliPercent: 6625, driveMinutes: 14, wallHex: '#8a4a3a', zoneCents: null },
			container: [
				{ name: 'Left of the gate', topCm: 46.99, heightCm: 46, wallCm: 2.5, outletNear: true, hoseNear: false },
				{ name: 'Sill', shape: 'window box', sillToGlassCm: 18.415, topDepthCm: 46.99 },
			],
		})
	})

	test('or containers at a place that is known: what was typed of a new one does not count', () => {
		const said = sent({ ...gate, place: uuid(7), 'new.name': '', ...pot(2) })
		expect(said.ok && [said.value.place, said.value.new]).toEqual([uuid(7), undefined])
	})

	test('a depth typed before a round shape was chosen does not count, though it be none', () => {
		const said = sent({ ...gate, ...pot(1, { topDepthCm: '1/16', bottomDepthCm: '900' }) })
		expect(said.ok && said.value.container[0]).toMatchObject({ topDepthCm: null, bottomDepthCm: null })
	})

	test.each<{ name: string; typed: Typed; says: Record<string, string> }>([
		{ name: 'no container', typed: gate, says: { container: 'Add a container.' } },
		{
			name: 'no shape and no light, each beside its own pictures',
			typed: { ...gate, ...pot(1), ...pot(3, { shape: '', light: '' }) },
			says: { 'container.3.shape': 'Choose its shape.', 'container.3.light': 'Choose its light.' },
		},
		{
			name: 'a foot that was not measured',
			typed: { ...gate, ...pot(12, { bottomCm: '' }) },
			says: { 'container.12.bottomCm': expect.stringContaining('18 1/2') },
		},
		{
			name: 'walls thicker than the pot, beside what it is made of',
			typed: { ...gate, ...pot(1, { wall: 'cast stone', bottomCm: '3' }) },
			says: { 'container.1.wall': 'The walls are thicker than the pot: nothing would be left inside.' },
		},
		{
			name: 'a new place without its name',
			typed: { ...gate, 'new.name': ' ', ...pot(1) },
			says: { 'new.name': 'This cannot be left empty.' },
		},
		{
			name: 'neither a place nor a new one',
			typed: { once: uuid(1), place: '', ...pot(1) },
			says: { place: 'Choose the place, or say what the new one is called.' },
		},
	])('$name is told', ({ typed, says }) => {
		expect(wrong(typed)).toEqual(says)
	})

	test('more than twelve at once are told, and twelve are taken', () => {
		const many = (count: number) =>
			Object.assign({}, gate, ...Array.from({ length: count }, (_, index) => pot(index + 1)))
		expect(sent(many(12)).ok).toBe(true)
		expect(wrong(many(13))).toEqual({ container: '12 containers are the most in one go. Send these first.' })
	})

	test('a box that no page has is refused', () => {
		for (const name of [
			'container.1.vesselKg',
			'container.1.__proto__',
			'new.doorHex',
			'retiredAt',
			'container.x.name',
		])
			expect([name, sent({ ...gate, ...pot(1), [name]: '1' }).ok]).toEqual([name, false])
	})
})

describe('the boxes of several containers on one page', () => {
	const numbered = fc.uniqueArray(fc.integer({ min: 0, max: 99 }), { maxLength: 12 })

	test('are told apart by their numbers, which come back in their order, whatever order they were sent in', () => {
		fc.assert(
			fc.property(numbered, (numbers) => {
				const typed: Typed = Object.assign({}, ...numbers.map((number) => pot(number, { name: `Pot ${number}` })))
				expect(containerNumbers(typed)).toEqual(numbers.toSorted((a, b) => a - b))
				for (const number of numbers) expect(boxesOf(typed, number).name).toBe(`Pot ${number}`)
				const said = sent({ ...gate, ...typed })
				const names = containerNumbers(typed).map((number) => `Pot ${number}`)
				if (numbers.length > 0) expect(said.ok && said.value.container.map(({ name }) => name)).toEqual(names)
			}),
		)
	})
})
