import { describe, expect, test } from 'vitest'
import { mergeSiteColours, renameSiteColour } from '@/db/clients/change-colours'
import { clientPage } from '@/db/clients/read-clients'
import { addSiteColours } from '@/db/clients/save-place'
import { must } from '@/demo/play/must'
import { blended } from '@/lib/colour/site/blended'
import { hex } from '@/lib/units/hex'
import type { ClientId } from '@/lib/units/id'
import { changesOf, refused } from '../stage/rows'
import { found, studio } from '../stage/studio'

const of = studio()
const hidden = { ok: false, why: 'hidden' }
const designer = () => of.as('designer')
const bakery = () => of.cast().clients.bakery.id
const coloursOf = async (client: ClientId = bakery(), place = 0) =>
	found(found(await clientPage(await designer(), client)).places[place]).colours

describe('a colour of the building', () => {
	test('keeps the spot where its photo showed it; one that was added by eye has none', async () => {
		const at = { client: bakery(), place: of.cast().places.bakery }
		const bell = { name: 'bell', hex: hex('#b08d4f'), side: 'outside' } as const
		const sill = { name: 'sill', hex: hex('#d7d2c4'), side: 'outside', spot: { x: 0.25, y: 0.875 } } as const
		must('both', await addSiteColours(await designer(), at, [bell, sill], of.stamp()))
		const spots = (await coloursOf()).slice(-2).map(({ name, spotX, spotY }) => [name, spotX, spotY])
		expect(spots).toEqual([
			['bell', null, null],
			['sill', 0.25, 0.875],
		])
	})

	test('renamed, stays what and where it was', async () => {
		const [pans, ...others] = await coloursOf()
		const { id } = found(pans)
		const viewer = await designer()
		const renaming = { client: bakery(), colour: id, name: 'copper pans' }
		const { did } = await changesOf(of.folder(), () => renameSiteColour(viewer, renaming, of.stamp()))
		expect(did).toEqual({ event: '+1', site_colour: expect.anything() })
		expect(await coloursOf()).toEqual([{ ...pans, name: 'copper pans' }, ...others])
	})
})

describe('two colours of a place made one', () => {
	test('are half of each under the name of the first, and the second is gone', async () => {
		const [pans, awning, brass] = await coloursOf()
		const [one, other] = [found(brass), found(pans)]
		const merging = { client: bakery(), colour: one.id, other: other.id }
		must('merge', await mergeSiteColours(await designer(), merging, of.stamp()))
		expect(await coloursOf()).toEqual([awning, { ...one, hex: blended(one, other) }])
	})

	test('have to be two of one place', async () => {
		const [pans] = await coloursOf()
		const same = { client: bakery(), colour: found(pans).id, other: found(pans).id }
		const viewer = await designer()
		const why = { ok: false, why: 'not two of one place' }
		expect(await refused(of.folder(), () => mergeSiteColours(viewer, same, of.stamp()))).toEqual(why)
		const union = of.cast().clients.creditUnion.id
		const [here, there] = [(await coloursOf(union, 0))[0], (await coloursOf(union, 1))[0]]
		const apart = { client: union, colour: found(here).id, other: found(there).id }
		expect(await refused(of.folder(), () => mergeSiteColours(viewer, apart, of.stamp()))).toEqual(why)
	})

	test('are both of the client: another’s is not found', async () => {
		const [pans] = await coloursOf()
		const [theirs] = await coloursOf(of.cast().clients.dental.id)
		const viewer = await designer()
		const mixed = { client: bakery(), colour: found(pans).id, other: found(theirs).id }
		expect(await refused(of.folder(), () => mergeSiteColours(viewer, mixed, of.stamp()))).toEqual(hidden)
		const renaming = { client: bakery(), colour: found(theirs).id, name: 'mine' }
		expect(await refused(of.folder(), () => renameSiteColour(viewer, renaming, of.stamp()))).toEqual(hidden)
	})
})
