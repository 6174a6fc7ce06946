import { describe, expect, test } from 'vitest'
import { listMaterials, saveMaterial } from '@/db/catalogue/materials'
import { clientPage } from '@/db/clients/read-clients'
import { saveContainer } from '@/db/clients/save-container'
import { savePlace } from '@/db/clients/save-place'
import { start } from '@/db/start/start'
import { rateEffects } from '@/db/studio/rate-effects'
import { saveRates } from '@/db/studio/save-rates'
import { must } from '@/demo/play/must'
import { defaultRates } from '@/lib/pricing/rates'
import type { ProposalId } from '@/lib/units/id'
import { close, found, stranger, studio } from '../stage/studio'
import { stepsOf } from './steps'

const of = studio()
const { idOf, redraft, publish } = stepsOf(of)

const weights = () =>
	stranger(of.folder(), (sqlite) =>
		sqlite
			.prepare<[], { id: ProposalId; number: number; valueCents: number | null; marginTenths: number | null }>(
				'SELECT id, revision_number AS number, value_cents AS valueCents, margin_tenths AS marginTenths FROM proposal ORDER BY id',
			)
			.all(),
	)
const weightOf = (id: ProposalId) => {
	const { valueCents, marginTenths } = found(weights().find((each) => each.id === id))
	return { valueCents, marginTenths }
}

/** What the desk would say now: the same prices, from what the record holds. */
async function workedOut(id: ProposalId) {
	const effects = found(await rateEffects(await of.as('designer'), defaultRates, of.stamp()))
	return found(effects.find(({ proposal }) => proposal === id)).was
}

const published = () => weights().filter(({ number }) => number > 0)

/** A draft's worth follows what is done; of whatever is published it stays. */
async function changes(act: () => Promise<unknown>): Promise<void> {
	const [before, others] = [weightOf(idOf('bicycles')), published()]
	expect(others.length).toBeGreaterThan(20)
	await act()
	const after = weightOf(idOf('bicycles'))
	expect(after).not.toEqual(before)
	expect(after).toEqual(await workedOut(idOf('bicycles')))
	expect(published()).toEqual(others)
}

describe('the ledger of a season shows what a draft comes to', () => {
	test('as it was last saved, and the same once it is published', async () => {
		const drafted = weightOf(idOf('bicycles'))
		expect(drafted).toEqual(await workedOut(idOf('bicycles')))
		expect(drafted.valueCents).toBeGreaterThan(0)
		await publish('bicycles')
		expect(weightOf(idOf('bicycles'))).toEqual(drafted)
	})

	test('and nothing of one without a palette', async () => {
		await redraft('bicycles', (draft) => ({ ...draft, options: [] }))
		expect(weightOf(idOf('bicycles'))).toEqual({ valueCents: null, marginTenths: null })
	})

	test('after other rates; what is published keeps its own', () =>
		changes(async () => {
			const dearer = { ...defaultRates, billedCentsPerHour: 9_000 }
			must('rates', await saveRates(await of.as('designer'), { version: 1, rates: dearer }, of.stamp()))
		}))

	test('after a material in it came to cost more', () =>
		changes(async () => {
			const designer = await of.as('designer')
			const isCedar = (row: { material: { id: string } }) => row.material.id === of.cast().materials.cedar
			const { material, trait, pack, supplier } = found((await listMaterials(designer)).find(isCedar))
			const { size, priceCents, freightPercent } = found(pack ?? undefined)
			const dearer = { supplier: supplier ?? '', size, priceCents: priceCents * 3, freightPercent }
			const fields = { ...material, ...found(trait ?? undefined) }
			must('cedar', await saveMaterial(designer, material.id, fields, dearer, of.stamp()))
		}))

	test('after its container turned out larger', () =>
		changes(async () => {
			const designer = await of.as('designer')
			const client = of.cast().clients.bicycles.id
			const { places } = found(await clientPage(designer, client))
			const { id, placeId, position: _, retiredAt: _gone, ...card } = found(places[0]?.containers[0])
			const larger = { ...card, topCm: card.topCm * 3 }
			must('pot', await saveContainer(designer, { client, place: placeId, container: id }, larger, of.stamp()))
		}))

	test('after the way to its place turned out longer', () =>
		changes(async () => {
			const designer = await of.as('designer')
			const client = of.cast().clients.bicycles.id
			const { places } = found(await clientPage(designer, client))
			const { id, clientId: _, position: _at, containers: _c, colours: _s, ...fields } = found(places[0])
			const farther = { ...fields, driveMinutes: fields.driveMinutes + 60 }
			must('place', await savePlace(designer, { client, place: id }, farther, of.stamp()))
		}))

	test('of a record that did not keep it yet, once it is opened', async () => {
		const before = weights()
		stranger(of.folder(), (sqlite) =>
			sqlite.exec('UPDATE proposal SET value_cents = NULL, margin_tenths = NULL WHERE revision_number = 0'),
		)
		expect(weights()).not.toEqual(before)
		close()
		start(of.folder())
		expect(weights()).toEqual(before)
	})
})
