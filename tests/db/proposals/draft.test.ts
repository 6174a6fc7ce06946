import { describe, expect, test } from 'vitest'
import { beginProposal } from '@/db/proposals/begin'
import { readDraft, type Saving, saveDraft } from '@/db/proposals/draft'
import { seasonPage } from '@/db/studio/season-page'
import { must } from '@/demo/play/must'
import type { AnyPersonKey } from '@/demo/play/stage'
import { emptyDraft } from '@/lib/proposal/draft'
import { id } from '@/lib/units/id'
import { changesOf, refused, rowsIn } from '../stage/rows'
import { fillDisk, found, stranger, studio, utc } from '../stage/studio'
import { stepsOf } from './steps'

const of = studio()
const { draft, idOf, page, redraft } = stepsOf(of)
const absent = id<'proposal'>('01999999-0000-7000-8000-00000000000a')

const save = async (who: AnyPersonKey | 'nobody' | 'system', saving: Saving) =>
	saveDraft(await of.as(who), saving, of.stamp(utc('2026-10-06T17:05')))

const saving = async (change: Partial<Saving> = {}): Promise<Saving> => ({
	proposal: idOf('bicycles'),
	...(await draft('bicycles')),
	...change,
})

const materialsOf = (proposal: string) =>
	stranger(of.folder(), (sqlite) =>
		sqlite
			.prepare<[string], string>('SELECT material_id FROM draft_material WHERE proposal_id = ? ORDER BY material_id')
			.pluck()
			.all(proposal),
	)

const row = async (proposal: string) => {
	const ledger = await seasonPage(await of.as('designer'), { season: of.cast().seasons.winter, page: 1 }, of.stamp())
	return found(ledger?.rows.find((each) => each.id === proposal))
}

describe('a draft saved', () => {
	test('is the next version, with who saved it and when', async () => {
		const { version, draft: kept, ...rest } = await saving()
		const next = { ...kept, title: 'A rust-red door in February', letter: 'Later, and warmer.' }
		const { said, did } = await changesOf(of.folder(), () => save('designer', { ...rest, version, draft: next }))
		expect(said).toEqual({ ok: true, version: version + 1 })
		expect(did).toEqual({ draft: '~1' })
		expect(await draft('bicycles')).toMatchObject({ version: version + 1, draft: next, client: 'Ostleigh Cycles' })
		expect(rowsIn(of.folder()).draft).toContainEqual(expect.stringContaining('"2026-10-06T17:05:00.000Z"'))
	})

	test('over another version hands theirs back, and keeps it', async () => {
		const mine = await saving()
		await redraft('bicycles', (kept) => ({ ...kept, title: 'Saved at the other desk' }))
		const said = await refused(of.folder(), () => save('designer', mine))
		expect(said).toMatchObject({ ok: false, why: 'saved elsewhere', version: mine.version + 1 })
		expect('theirs' in said && said.theirs.title).toBe('Saved at the other desk')
	})

	test('keeps which materials it names, once each, and of those only such as exist', async () => {
		const { cedar, warmLights } = { cedar: of.cast().materials.cedar, warmLights: of.cast().materials.warmLights }
		const line = { role: 'filler', holding: 'sold', count: { way: 'typed', value: 3 } } as const
		await redraft('bicycles', (kept) => ({
			...kept,
			options: kept.options.map((option) => ({
				...option,
				pots: option.pots.map((pot) => ({
					...pot,
					lines: [cedar, cedar, id<'material'>('01999999-0000-7000-8000-00000000000b')].map((material) => ({
						material,
						...line,
					})),
				})),
			})),
			extras: [
				{
					key: 'l',
					name: 'Lights',
					words: '',
					place: of.cast().places.bicycles,
					minutes: 0,
					lines: [{ material: warmLights, ...line }],
				},
			],
		}))
		expect(materialsOf(idOf('bicycles'))).toEqual([cedar, warmLights].toSorted())
	})

	test('that is empty names none', async () => {
		expect(materialsOf(idOf('bicycles')).length).toBeGreaterThan(3)
		await redraft('bicycles', () => emptyDraft({ from: null, to: null, answerBy: null }))
		expect(materialsOf(idOf('bicycles'))).toEqual([])
	})

	test('shows in the ledger while nothing is out', async () => {
		await redraft('bicycles', (kept) => ({
			...kept,
			options: kept.options.map((option) => ({ ...option, name: 'Bark' })),
		}))
		expect(await row(idOf('bicycles'))).toMatchObject({ palette: 'Bark', paletteCount: 1 })
		await redraft('bicycles', (kept) => ({ ...kept, options: [] }))
		expect(await row(idOf('bicycles'))).toMatchObject({ palette: '', paletteCount: 0, paletteHexes: '' })
	})

	test('leaves the ledger and the offer alone once a revision is out', async () => {
		const before = [await row(idOf('bakery')), await page('bakery')]
		await redraft('bakery', (kept) => ({ ...kept, title: 'Another', options: [] }))
		expect([await row(idOf('bakery')), await page('bakery')]).toEqual(before)
	})

	test.each(['helper', 'bicyclesApprover', 'dentalApprover', 'nobody', 'system'] as const)(
		'is hidden from %s',
		async (who) => {
			const mine = await saving()
			expect(await refused(of.folder(), () => save(who, mine))).toEqual({ ok: false, why: 'hidden' })
			expect(await readDraft(await of.as(who), idOf('bicycles'), of.stamp())).toBeUndefined()
		},
	)

	test('is not there where there is none', async () => {
		expect(await save('designer', await saving({ proposal: absent }))).toEqual({ ok: false, why: 'hidden' })
		expect(await readDraft(await of.as('designer'), absent, of.stamp())).toBeUndefined()
	})
})

describe('a proposal begun', () => {
	const where = () => ({ client: of.cast().clients.newcomer.id, season: of.cast().seasons.winter })

	test('is a draft with the dates of its season, one line, and no mail', async () => {
		const designer = await of.as('designer')
		const { said, did } = await changesOf(of.folder(), () => beginProposal(designer, where(), of.stamp()))
		expect(did).toEqual({ proposal: '+1', draft: '+1', event: '+1' })
		const begun = must('newcomer', said)
		const winter = { from: '2026-11-16', to: '2026-11-27', answerBy: '2026-10-09' }
		expect(await readDraft(designer, begun.id, of.stamp())).toMatchObject({
			version: 1,
			state: { is: 'drafting' },
			client: 'The Fennaway household',
			draft: { window: { from: winter.from, to: winter.to }, answerBy: winter.answerBy, options: [], title: '' },
		})
	})

	test('twice is the same one', async () => {
		const designer = await of.as('designer')
		const first = await beginProposal(designer, where(), of.stamp())
		expect(await refused(of.folder(), () => beginProposal(designer, where(), of.stamp()))).toEqual(first)
		const bakery = { client: of.cast().clients.bakery.id, season: of.cast().seasons.winter }
		const said = await refused(of.folder(), () => beginProposal(designer, bakery, of.stamp()))
		expect(said).toEqual({ ok: true, id: idOf('bakery') })
	})

	test('is nothing without its client or its season', async () => {
		const designer = await of.as('designer')
		const none = { client: id<'client'>(absent), season: id<'season'>(absent) }
		for (const part of [{ client: none.client }, { season: none.season }])
			expect(await refused(of.folder(), () => beginProposal(designer, { ...where(), ...part }, of.stamp()))).toEqual({
				ok: false,
				why: 'hidden',
			})
	})

	test.each(['helper', 'newcomerApprover', 'bakeryApprover', 'nobody', 'system'] as const)('not by %s', async (who) => {
		const viewer = await of.as(who)
		expect(await refused(of.folder(), () => beginProposal(viewer, where(), of.stamp()))).toEqual({
			ok: false,
			why: 'hidden',
		})
	})

	test.each(['draft', 'event'])('leaves nothing when its %s cannot be written', async (table) => {
		const designer = await of.as('designer')
		fillDisk(of.folder(), table)
		await refused(of.folder(), () =>
			expect(beginProposal(designer, where(), of.stamp())).rejects.toThrow('the disk is full'),
		)
	})
})
