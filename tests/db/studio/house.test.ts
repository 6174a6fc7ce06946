import { describe, expect, test } from 'vitest'
import { read, write } from '@/db/open'
import { offerSetUp, setUpStudio } from '@/db/start/set-up'
import { start } from '@/db/start/start'
import { hireStaff } from '@/db/studio/hire'
import { keepRates, latestRates, ratesOf } from '@/db/studio/rates'
import { readSettings, saveSettings, studioName, whoIs } from '@/db/studio/studio'
import { viewerOf } from '@/db/viewer'
import { must } from '@/demo/play/must'
import { stampsFrom } from '@/demo/stamps'
import { defaultRates } from '@/lib/pricing/rates'
import { sha256 } from '@/lib/record/hash'
import { changesOf, refused } from '../stage/rows'
import { emptyStudio, found, studio, utc } from '../stage/studio'

describe('the studio', () => {
	const of = studio()

	test('its settings, changed, are read back, and its name by everybody', async () => {
		const viewer = await of.as('designer')
		const next = { name: 'Reed & Lamp', timeZone: 'Europe/Lisbon', currency: 'USD', lengths: 'cm' } as const
		const { did } = await changesOf(of.folder(), () => saveSettings(viewer, next, of.stamp()))
		expect(did).toEqual({ event: '+1', studio: '~1' })
		expect(await readSettings(viewer)).toEqual(next)
		for (const who of ['bakeryViewer', 'helper', 'nobody'] as const)
			expect(await studioName(await of.as(who))).toBe('Reed & Lamp')
	})

	const inEuros = { name: 'Sedge & Lantern', timeZone: 'America/New_York', currency: 'EUR', lengths: 'in' } as const

	test('keeps its currency once a revision stands: what was published and approved is in it', async () => {
		const viewer = await of.as('designer')
		const said = await refused(of.folder(), () => saveSettings(viewer, inEuros, of.stamp()))
		expect(said).toEqual({ ok: false, why: 'prices stand' })
	})

	test.each(['designer', 'helper', 'twoDoors'] as const)('%s reads their own name', async (who) => {
		const { name, address } = of.cast().people[who]
		expect(await whoIs(await of.as(who))).toEqual({ name, address })
	})
})

describe('a member of staff', () => {
	const of = studio()
	const hire = async (change: Partial<Parameters<typeof hireStaff>[1]> = {}) =>
		hireStaff(
			await of.as('designer'),
			{ name: 'Perrin Ashgrove', address: 'perrin@sedgeandlantern.example', role: 'helper', ...change },
			of.stamp(),
		)

	test('new, comes in by their own role', async () => {
		const { said, did } = await changesOf(of.folder(), () => hire())
		expect(did).toEqual({ event: '+1', person: '+1', staff: '+1' })
		expect(await viewerOf(must('hired', said).person)).toMatchObject({ is: 'staff', role: 'helper' })
	})

	test('is not hired twice, and stands on one side of the door', async () => {
		const { helper, bakeryViewer } = of.cast().people
		expect(await refused(of.folder(), () => hire(helper))).toEqual({ ok: false, why: 'works here already' })
		expect(await refused(of.folder(), () => hire(bakeryViewer))).toEqual({ ok: false, why: 'is a contact of a client' })
	})
})

describe('rates', () => {
	const of = studio()

	test('changed, are the next version, and those before stay for the prices that they made', async () => {
		const viewer = await of.as('designer')
		const dearer = { ...defaultRates, billedCentsPerHour: 7300 }
		const { said, did } = await changesOf(of.folder(), async () =>
			write((tx) => keepRates(tx, of.stamp(), viewer, dearer)),
		)
		expect([said, did]).toEqual([2, { event: '+1', rates: '+1' }])
		expect(read(latestRates)).toEqual({ version: 2, rates: dearer })
		expect(read((db) => ratesOf(db, 1))).toEqual(defaultRates)
		expect(() => read((db) => ratesOf(db, 3))).toThrow('there is no version 3')
	})
})

describe('before anybody set it up', () => {
	const { folder } = emptyStudio()

	test('nothing is published, and the currency may be changed', async () => {
		start(folder())
		const [stamp, token] = [stampsFrom('a test')(utc('2026-10-06T16:00')), sha256('set-up link')]
		await offerSetUp(token, stamp)
		const made = { name: 'Sedge & Lantern', timeZone: 'America/New_York', currency: 'USD', lengths: 'in' } as const
		const designer = { designer: 'Maren Sedgwick', address: 'maren@sedgeandlantern.example' }
		const viewer = await viewerOf(found(await setUpStudio(token, { ...made, ...designer }, stamp)))
		must('settings', await saveSettings(viewer, { ...made, currency: 'EUR' }, stamp))
		expect(await readSettings(viewer)).toMatchObject({ currency: 'EUR' })
	})

	test('the studio has no name and no rates', async () => {
		start(folder())
		expect(await studioName(await viewerOf('nobody'))).toBeUndefined()
		expect(() => read(latestRates)).toThrow('the studio has no rates')
	})
})
