import { beforeAll, describe, expect, it } from 'vitest'
import { z } from 'zod'
import { json } from '../../ask/forms'
import { open } from '../../site/here'
import { record } from '../../site/snapshot'
import { draft, post, things } from './desk'

const recipe = '01900000-0000-7000-8000-0000000000aa'
const priced = z.object({
	problems: z.array(z.object({ says: z.string() })),
	options: z.array(
		z.object({
			words: z.array(z.string()),
			pots: z.array(
				z.object({ container: z.string(), open: z.array(z.object({ key: z.string(), says: z.string() })) }),
			),
		}),
	),
})
const line = z.object({ material: z.string(), count: z.string() })
const grown = z.object({
	option: z.object({
		palette: z.array(z.object({ hex: z.string() })),
		pots: z.array(z.object({ lines: z.array(line) })),
	}),
})

const grow = (next: unknown, of: string | null) =>
	open.ask('designer', `/studio/proposal/${things.proposal}/grow`, {
		method: 'POST',
		...json({ draft: next, option: first().key, recipe: of }),
	})

function first() {
	const [option] = draft.options
	if (option === undefined) throw new Error('The draft has no palette.')
	return option
}
const withOption = (more: object) => ({ ...draft, options: [{ ...first(), ...more }] })

/** The only pot of the only palette, with one line in it. */
const withLine = (material: string, role: string) => {
	const [pot] = first().pots
	const only = { material, role, holding: 'sold', count: '5', grows: null, isKept: false }
	return withOption({ pots: [{ container: pot?.container, lines: [only] }] })
}

async function price(next: unknown) {
	const answer = await post('price', { draft: next })
	expect(answer.status).toBe(200)
	return priced.parse(JSON.parse(answer.body))
}

beforeAll(() => {
	record(open.site.folder, (db) => {
		db.prepare(
			"INSERT OR IGNORE INTO recipe (id, name, quarter, note) VALUES (?, 'Not written yet', 'winter', '')",
		).run(recipe)
	})
})

describe('a design that hardly is one', () => {
	it('a recipe with no lines: refused with a sentence', async () => {
		const answer = await grow(draft, recipe)
		expect([answer.status, JSON.parse(answer.body)]).toEqual([
			422,
			{ errors: { recipe: 'This recipe has no lines yet: write them first, or choose another.' } },
		])
	})

	it('pots with nothing in them are priced, and each is named', async () => {
		const { problems, options } = await price(withOption({ pots: [] }))
		expect(problems.filter(({ says }) => says.includes('nothing is in')).length).toBe(draft.containers.length)
		expect(options.flatMap(({ pots }) => pots.map(({ open: [found] }) => found?.key))).toEqual(
			draft.containers.map(() => expect.stringMatching(/^empty/)),
		)
	})

	it.each([
		['one colour', first, 1],
		['no colour', first, 0],
	])('a palette with %s is priced and grown', async (_, option, count) => {
		const next = withOption({ palette: option().palette.slice(0, count) })
		const { options } = await price(next)
		expect(options.map(({ words }) => words.length > 0)).toEqual([count > 0])
		const answer = await grow(next, null)
		expect(answer.status).toBe(200)
		const { option: made } = grown.parse(JSON.parse(answer.body))
		expect(made.palette).toHaveLength(count)
		expect(made.pots.map(({ lines }) => lines.length)).toEqual(option().pots.map(({ lines }) => lines.length))
	})

	it('a material with no height is priced, grown, and told to be measured', async () => {
		const [material, name] = record(open.site.folder, (db) => {
			const row = db
				.prepare("SELECT m.id, m.name FROM material m JOIN trait t ON t.material_id = m.id WHERE m.role = 'thriller'")
				.raw()
				.get()
			const found = z.tuple([z.string(), z.string()]).parse(row)
			db.prepare('UPDATE trait SET length_cm = NULL WHERE material_id = ?').run(found[0])
			return found
		})
		const next = withLine(material, 'thriller')
		const found = (await price(next)).options.flatMap(({ pots }) => pots.flatMap((pot) => pot.open))
		const says = found.find(({ key }) => key === 'unknown/length/caution')?.says.toLowerCase()
		expect(says).toBe(`${name}: no length on the card, so how high it stands cannot be told.`.toLowerCase())
		const { option } = grown.parse(JSON.parse((await grow(next, null)).body))
		expect(option.pots.flatMap(({ lines }) => lines)).toEqual([{ material, count: '5' }])
	})

	it('palettes can be proposed where no material has a height', async () => {
		const kept = record(open.site.folder, (db) => {
			const rows = db.prepare<[], { id: string; cm: number }>('SELECT material_id id, length_cm cm FROM trait').all()
			db.prepare('UPDATE trait SET length_cm = NULL').run()
			return rows
		})
		const answer = await open.ask('designer', `/studio/proposal/${things.proposal}/propose`, {
			method: 'POST',
			...json({ draft }),
		})
		record(open.site.folder, (db) => {
			for (const { id, cm } of kept) db.prepare('UPDATE trait SET length_cm = ? WHERE material_id = ?').run(cm, id)
		})
		expect(answer.status).toBe(200)
		const { options } = z.object({ options: z.array(z.unknown()) }).parse(JSON.parse(answer.body))
		expect(options.length).toBeGreaterThan(0)
	})
})
