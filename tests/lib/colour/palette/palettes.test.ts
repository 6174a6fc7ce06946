import { describe, expect, test } from 'vitest'
import { difference } from '@/lib/colour/difference'
import { palettes } from '@/lib/colour/palette/palettes'
import { hex } from '@/lib/units/hex'
import { material, winter } from '../material'
import { bakery } from './ask'

const { palettes: three, short, echoed } = palettes(bakery())

describe('a bakery in November', () => {
	test('gets three palettes led by three colours of its front', () => {
		expect(short).toBeNull()
		expect(three.map(({ name }) => name)).toEqual(['Copper and plum', 'Plum and brass', 'Brass and copper'])
		expect(three.map(({ colours }) => colours[0]?.hex)).toEqual([winter.copper.hex, winter.plum.hex, winter.brass.hex])
	})

	test('says what each colour takes up, and of what it is made', () => {
		const [first] = three
		expect(first?.colours.slice(0, 3)).toEqual([
			{
				name: 'Copper',
				hex: '#b4643a',
				echoes: 'echoes the copper of your baking pans inside',
				materials: [winter.copper.id],
			},
			{ name: 'Plum', hex: '#6a2f4b', echoes: 'echoes the plum of your awning', materials: [winter.plum.id] },
			{ name: 'Bone', hex: '#d8d0c1', echoes: '', materials: [winter.birch.id, winter.bone.id] },
		])
		expect(three[1]?.colours[1]?.echoes).toBe('echoes your door brass')
	})

	test('says why in words', () => {
		expect(three[0]?.words).toEqual([
			'Copper is very near your baking pans inside.',
			'Plum is very near your awning.',
			'White birch stands out from the shop glass.',
			'Copper shows against every green of the month.',
			'It runs from plum to bone.',
			'Storage holds something for copper, plum and bone.',
		])
	})

	test('each has a stem that stands out from the glass and a neutral', () => {
		for (const { colours } of three) {
			const stems = colours.filter(({ materials }) =>
				materials.some((of) => [winter.birch.id, winter.dogwood.id, winter.willow.id].some((stem) => stem === of)),
			)
			expect(stems.some(({ hex: of }) => difference(of, hex('#3f5a60')) > 30)).toBe(true)
			expect(colours.length).toBe(4)
		}
	})

	test('each has another stem, and no neutral comes three times', () => {
		const stems = three.map(({ colours }) => colours[2]?.hex)
		expect(stems.toSorted()).toEqual([winter.willow.hex, winter.dogwood.hex, winter.birch.hex].toSorted())
		expect(new Set(three.map(({ colours }) => colours[3]?.hex)).size).toBeGreaterThan(1)
	})

	test('names what echoes each colour of the front, the door among them', () => {
		expect(echoed.map(({ name }) => name)).toEqual(['baking pans', 'awning', 'door brass', 'door'])
		expect(echoed.map(({ materials }) => materials[0])).toEqual([
			winter.copper.id,
			winter.plum.id,
			winter.brass.id,
			winter.dogwood.id,
		])
	})

	test('three that echo the sign alone do not push out what echoes the handle', () => {
		const near = { sign: ['#763838', '#7e5860', '#8e5848'], handle: '#967858' }
		const materials = [
			...near.sign.map((of, n) => material(50 + n, `kept ${n}`, of, { inStock: 5 })),
			material(53, 'bought', near.handle),
		]
		const site = [
			{ name: 'sign', hex: hex('#a05050'), side: 'outside' },
			{ name: 'handle', hex: hex('#b08d4f'), side: 'outside' },
		] as const
		const leading = palettes(bakery({ site, door: null, materials })).palettes.map(({ colours }) => colours[0]?.hex)
		expect(leading).toHaveLength(3)
		expect(leading).toContain(near.handle)
	})

	test('where only a sign and a handle are to be echoed, no two palettes have the same two accents', () => {
		const site = [
			{ name: 'sign', hex: hex('#23395b'), side: 'outside' },
			{ name: 'door handle', hex: hex('#b3924c'), side: 'outside' },
		] as const
		const made = palettes(bakery({ site, door: null })).palettes
		const pairs = made.map(({ colours }) =>
			colours
				.slice(0, 2)
				.map((each) => each.hex)
				.toSorted()
				.join(' '),
		)
		expect(new Set(pairs).size).toBe(3)
		expect(pairs).toContain([winter.navy.hex, winter.brass.hex].toSorted().join(' '))
	})

	test('a door that is among the site colours is not asked for twice', () => {
		const again = palettes(bakery({ door: hex('#b2904f') }))
		expect(again.echoed.map(({ name }) => name)).toEqual(['baking pans', 'awning', 'door brass'])
	})
})

describe('what there is decides', () => {
	const { birch, fir, copper, plum, brass, tulips, stakes, lights } = winter

	test('spring tulips are in no palette of November, and in one of April', () => {
		const ids = (month: number) =>
			palettes(bakery({ month, materials: [tulips, birch, fir, copper] })).palettes.flatMap(({ colours }) =>
				colours.flatMap(({ materials }) => materials),
			)
		expect(ids(11)).not.toContain(tulips.id)
		expect(ids(4)).toContain(tulips.id)
	})

	test('what cannot be had is used if storage holds it', () => {
		const kept = material(40, 'kept wreaths', '#b4643a', { had: [3], inStock: 4 })
		const [first] = palettes(bakery({ materials: [kept] })).palettes
		expect(first?.colours.map(({ materials }) => materials)).toEqual([[kept.id]])
	})

	test.each([
		{ name: 'no materials', materials: [], count: 0, says: 'Nothing that shows can be had in November' },
		{ name: 'only what holds and shines', materials: [stakes, lights], count: 0, says: 'Nothing that shows' },
		{ name: 'one accent', materials: [copper], count: 1, says: 'One only: what can be had in November' },
		{ name: 'two accents', materials: [copper, plum], count: 2, says: 'Two only' },
		{
			name: 'five browns that hardly differ',
			materials: ['#6d5640', '#6e5842', '#6a543f', '#715a44', '#6b563e'].map((of, n) => material(n, `brown ${n}`, of)),
			count: 1,
			says: 'One only',
		},
	])('$name: $count, with the reason', ({ materials, count, says }) => {
		const made = palettes(bakery({ materials }))
		expect(made.palettes).toHaveLength(count)
		expect(made.short).toContain(says)
	})

	test('without site colours and door there are three all the same, which say that they echo nothing', () => {
		const made = palettes(bakery({ site: [], door: null }))
		expect(made.palettes).toHaveLength(3)
		for (const { words, colours, parts } of made.palettes) {
			expect(words[0]).toBe('No colour of the building is known yet: there is nothing to echo.')
			expect(colours.every(({ echoes }) => echoes === '')).toBe(true)
			expect(parts.echo).toBe(0)
		}
	})

	test('an accent that is lost in the greens leads nothing where others show', () => {
		const moss = material(0, 'moss bows', '#4a6a44')
		const bows = ['#b4643a', '#6a2f4b', '#bb9346'].map((of, n) => material(60 + n, `bow ${n}`, of))
		const materials = [moss, ...bows, fir, winter.boxwood]
		const made = palettes(bakery({ site: [], door: null, materials })).palettes
		expect(made.map(({ colours }) => colours[0]?.hex)).toHaveLength(3)
		expect(made.map(({ colours }) => colours[0]?.hex)).not.toContain(moss.hex)
	})

	test('without a stem the palettes say so', () => {
		for (const { words } of palettes(bakery({ materials: [copper, plum, brass, fir] })).palettes)
			expect(words).toContain('No stem for the middle has any of these colours.')
	})

	test('two colours of one name are called after their materials', () => {
		const bow = material(41, 'fir-green bows', '#1f3d28')
		const top = material(42, 'a fir top', '#3d6147', { role: 'thriller' })
		const made = palettes(bakery({ materials: [bow, top], site: [], door: null }))
		expect(made.palettes.map(({ colours }) => colours.map(({ name }) => name))).toContainEqual([
			'Fir-green bows',
			'A fir top',
		])
	})
})
