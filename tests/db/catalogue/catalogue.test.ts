import { describe, expect, test } from 'vitest'
import { readLibrary } from '@/db/catalogue/library'
import { listMaterials, saveMaterial } from '@/db/catalogue/materials'
import { readStock } from '@/db/catalogue/read-stock'
import { saveRecipe } from '@/db/catalogue/recipes'
import { keepStock } from '@/db/catalogue/stock'
import { listSuppliers, saveSupplier } from '@/db/catalogue/suppliers'
import { must } from '@/demo/play/must'
import { hex } from '@/lib/units/hex'
import { id } from '@/lib/units/id'
import { changesOf, refused, rowsIn } from '../stage/rows'
import { found, stranger, studio } from '../stage/studio'
import { hollyTraits } from './holly-traits'

const of = studio()
const none = '01999999-0000-7000-8000-00000000000a'
const hidden = { ok: false, why: 'hidden' }
const designer = () => of.as('designer')

const ilex = {
	name: 'Ilex, red',
	kind: 'fresh',
	piece: 'branch',
	role: 'thriller',
	unit: 'stem',
	piecesPerUnit: 1,
	hex: hex('#9c2b22'),
	isPoisonousToPeople: true,
	isPoisonousToPets: true,
	hasSmallParts: false,
} as const
const holly = { ...ilex, ...hollyTraits }
const sold = { supplier: 'Ferrow Growers', size: 10, priceCents: 1900, freightPercent: 8 }

describe('a material', () => {
	const save = async (
		material: Parameters<typeof saveMaterial>[1],
		fields: Parameters<typeof saveMaterial>[2] = holly,
		pack = sold,
	) => saveMaterial(await designer(), material, fields, pack, of.stamp())
	const row = async (name: string) =>
		found((await listMaterials(await designer())).find(({ material }) => material.name === name))

	test('new, comes with its pack and, where nobody knows him yet, its supplier', async () => {
		const { did } = await changesOf(of.folder(), () => save(null))
		expect(did).toEqual({ event: '+1', material: '+1', pack: '+1', supplier: '+1', trait: '+1' })
		expect(await row('Ilex, red')).toMatchObject({
			material: ilex,
			trait: hollyTraits,
			pack: { size: 10, priceCents: 1900, freightPercent: 8, retiredAt: null },
			supplier: 'Ferrow Growers',
			inStock: 0,
		})
	})

	test('changed, is bought in the new pack; the one before is put aside and stays, and the draft that names it is weighed anew', async () => {
		const { material, pack } = found((await listMaterials(await designer()))[0])
		const { did } = await changesOf(of.folder(), () =>
			save(material.id, { ...holly, name: 'Another name' }, { ...sold, priceCents: 2100 }),
		)
		expect(did).toEqual({ event: '+1', material: '~1', pack: '+1 ~1', proposal: '~1', supplier: '+1', trait: '~1' })
		expect((await row('Another name')).pack).toMatchObject({ priceCents: 2100 })
		const retired = stranger(of.folder(), (sqlite) =>
			sqlite.prepare('SELECT retired_at FROM pack WHERE id = ?').pluck().get(pack?.id),
		)
		expect(retired).toBe(of.cast().now)
	})

	test('has a name of its own', async () => {
		const [first, second] = await listMaterials(await designer())
		const taken = { ...holly, name: found(first).material.name }
		for (const material of [null, found(second).material.id])
			expect(await refused(of.folder(), () => save(material, taken))).toEqual({ ok: false, why: 'name taken' })
		expect(await save(found(first).material.id, taken)).toMatchObject({ ok: true })
	})

	test('that is not there is not made by a change', async () => {
		expect(await refused(of.folder(), () => save(id<'material'>(none)))).toEqual(hidden)
	})

	test('is listed by role and name, each once, with what the studio has of it', async () => {
		const list = await listMaterials(await designer())
		expect(list).toHaveLength(Object.keys(of.cast().materials).length)
		const order = list.map(({ material }) => `${material.role} ${material.name}`)
		expect(order).toEqual(order.toSorted())
		const stock = stranger(of.folder(), (sqlite) =>
			sqlite.prepare('SELECT count(*) FROM stock WHERE client_id IS NULL AND quantity > 0').pluck().get(),
		)
		expect(list.filter(({ inStock }) => inStock > 0)).toHaveLength(Number(stock))
	})
})

describe('what storage holds', () => {
	const keep = async (held: Partial<Parameters<typeof keepStock>[1]>) =>
		keepStock(
			await designer(),
			{ material: of.cast().materials.cedar, client: null, quantity: 12.5, usesBefore: 2, ...held },
			of.stamp(),
		)

	test('counted again, replaces the count; the studio’s and each client’s apart', async () => {
		const kinds = [null, of.cast().clients.bakery.id, of.cast().clients.dental.id]
		for (const client of kinds)
			expect((await changesOf(of.folder(), () => keep({ client }))).did).toEqual({ event: '+1', stock: '+1' })
		for (const client of kinds)
			expect((await changesOf(of.folder(), () => keep({ client, quantity: 3 }))).did).toEqual({
				event: '+1',
				stock: '~1',
			})
	})

	test('is read with its owners, the studio’s first', async () => {
		const { bakery, dental } = of.cast().clients
		const read = async () => readStock(await designer(), of.cast().materials.cedar)
		for (const [client, quantity, usesBefore] of [
			[dental.id, 4, 1],
			[bakery.id, 7, 3],
			[null, 12.5, 2],
		] as const)
			await keep({ client, quantity, usesBefore })
		const [bakeryRow, dentalRow] = [
			{ client: { id: bakery.id, name: bakery.name }, quantity: 7, usesBefore: 3 },
			{ client: { id: dental.id, name: dental.name }, quantity: 4, usesBefore: 1 },
		]
		const byName = [bakeryRow, dentalRow].toSorted((a, b) => (a.client.name < b.client.name ? -1 : 1))
		expect(await read()).toEqual([{ client: null, quantity: 12.5, usesBefore: 2 }, ...byName])
		expect(await readStock(await designer(), id<'material'>(none))).toEqual([])
	})

	test('of nothing known, or for nobody known', async () => {
		for (const held of [{ material: id<'material'>(none) }, { client: id<'client'>(none) }])
			expect(await refused(of.folder(), () => keep(held))).toEqual(hidden)
	})
})

describe('a recipe', () => {
	const line = (count: number) =>
		({ material: of.cast().materials.cedar, role: 'filler', holding: 'sold', grows: { way: 'greens', count } }) as const
	const fields = (name: string, counts: readonly number[]) =>
		({ name, quarter: 'winter', note: 'Late.', lines: counts.map(line) }) as const
	const save = async (recipe: Parameters<typeof saveRecipe>[1], what: Parameters<typeof saveRecipe>[2]) =>
		saveRecipe(await designer(), recipe, what, of.stamp())
	const counts = (recipe: string) =>
		stranger(of.folder(), (sqlite) =>
			sqlite.prepare('SELECT count FROM recipe_line WHERE recipe_id = ? ORDER BY position').pluck().all(recipe),
		)

	test('new, keeps its lines in order; changed, has the new ones alone', async () => {
		const { id: recipe } = must('new', await save(null, fields('Cedar alone', [4, 2.5, 1])))
		expect(counts(recipe)).toEqual([4, 2.5, 1])
		must('change', await save(recipe, fields('Cedar alone', [3])))
		expect(counts(recipe)).toEqual([3])
	})

	test('has a name of its own, and is not made by a change', async () => {
		const { id: recipe } = must('new', await save(null, fields('Cedar alone', [4])))
		expect(await refused(of.folder(), () => save(null, fields('Cedar alone', [5])))).toEqual({
			ok: false,
			why: 'name taken',
		})
		expect(await refused(of.folder(), () => save(id<'recipe'>(none), fields('Other', [5])))).toEqual(hidden)
		expect(counts(recipe)).toEqual([4])
	})

	test('of a material that is not there, or that holds one, is not kept', async () => {
		const strange = { ...line(2), material: id<'material'>(none) }
		const holding = { ...line(2), grows: { way: 'held', count: 1, holds: id<'material'>(none) } } as const
		for (const other of [strange, holding])
			expect(
				await refused(of.folder(), () => save(null, { ...fields('Cedar alone', [4]), lines: [line(4), other] })),
			).toEqual(hidden)
	})

	test('comes back from the library as it was written, note and all', async () => {
		const { cedar, stakes, ivy } = of.cast().materials
		const lines = [
			line(4),
			{ material: ivy, role: 'spiller', holding: 'own', grows: { way: 'spacing', share: 0.35 } },
			{ material: stakes, role: 'mechanics', holding: 'sold', grows: { way: 'held', count: 0.5, holds: cedar } },
			{ material: stakes, role: 'mechanics', holding: 'sold', grows: { way: 'held', count: 2, holds: null } },
		] as const
		const { id: recipe } = must('new', await save(null, { ...fields('Cedar and ivy', []), lines }))
		const library = found(await readLibrary(await designer()))
		expect(library.recipes.find((each) => each.id === recipe)).toEqual({
			id: recipe,
			...{ name: 'Cedar and ivy', quarter: 'winter', note: 'Late.', lines },
		})
		expect(library.materials.get(cedar)).toMatchObject({ isRetired: false, role: 'spiller' })
	})
})

describe('a supplier', () => {
	const save = async (of_: Parameters<typeof saveSupplier>[1], name: string, leadDays: number) =>
		saveSupplier(await designer(), of_, { name, leadDays, note: 'By rail.' }, of.stamp())

	test('new, then changed, stays one; its name may change', async () => {
		const first = await changesOf(of.folder(), () => save(null, 'Ferrow Growers', 9))
		const { id: ferrow } = must('new', first.said)
		const again = await changesOf(of.folder(), () => save(ferrow, 'Ferrow and Sons', 11))
		expect([first.did, again.did]).toEqual([
			{ event: '+1', supplier: '+1' },
			{ event: '+1', supplier: '~1' },
		])
		expect(again.said).toEqual(first.said)
		expect(rowsIn(of.folder()).supplier).toContainEqual(expect.stringContaining('"Ferrow and Sons",11,"By rail."'))
	})

	test('has a name of its own, and is not made by a change', async () => {
		const [one, two] = await listSuppliers(await designer())
		for (const which of [null, found(two).id])
			expect(await refused(of.folder(), () => save(which, found(one).name, 3))).toEqual({
				ok: false,
				why: 'name taken',
			})
		expect(await refused(of.folder(), () => save(id<'supplier'>(none), 'Ferrow Growers', 3))).toEqual(hidden)
	})

	test('is listed by name with how many materials are bought there now', async () => {
		const list = await listSuppliers(await designer())
		expect(list.map(({ name }) => name)).toEqual(list.map(({ name }) => name).toSorted())
		expect(list.reduce((sum, { materials }) => sum + materials, 0)).toBe(Object.keys(of.cast().materials).length)
		await save(null, 'Aldermoor Twigs', 4)
		expect((await listSuppliers(await designer()))[0]).toMatchObject({
			name: 'Aldermoor Twigs',
			leadDays: 4,
			materials: 0,
		})
	})
})
