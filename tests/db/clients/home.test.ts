import { describe, expect, test } from 'vitest'
import { eraseClient } from '@/db/clients/erase'
import { doors, readHome } from '@/db/clients/home'
import { clientPage } from '@/db/clients/read-clients'
import { endContact } from '@/db/clients/save-contact'
import { approve } from '@/db/proposals/answers/approve'
import { readOffer } from '@/db/proposals/read-offer'
import { everything } from '@/lib/pricing/quote/choice'
import { quote } from '@/lib/pricing/quote/quote'
import { id } from '@/lib/units/id'
import { found, studio, today, utc } from '../stage/studio'

const of = studio()
const absent = id<'client'>('01999999-0000-7000-8000-00000000000a')

describe('doors', () => {
	test.each([
		['bakeryViewer', ['Marrowby Bakery']],
		['twoDoors', ['Kittiwell Veterinary Clinic', 'The Pellwick household']],
		['designer', []],
		['helper', []],
		['nobody', []],
		['system', []],
	] as const)('%s: %j', async (who, names) => {
		expect((await doors(await of.as(who))).map(({ name }) => name)).toEqual(names)
	})

	test('one that closes is gone at once; the other stays open', async () => {
		const [designer, { vet }, { twoDoors }] = [await of.as('designer'), of.cast().clients, of.cast().people]
		const { contacts } = found(await clientPage(designer, vet.id))
		const contact = found(contacts.find(({ name }) => name === twoDoors.name))
		await endContact(designer, { client: vet.id, contact: contact.id }, of.stamp())
		expect((await doors(await of.as('twoDoors'))).map(({ name }) => name)).toEqual(['The Pellwick household'])
	})

	test('so is that of a client who was erased', async () => {
		await eraseClient(await of.as('designer'), of.cast().clients.fieldstone.id, of.stamp())
		expect((await doors(await of.as('twoDoors'))).map(({ name }) => name)).toEqual(['Kittiwell Veterinary Clinic'])
	})
})

describe('behind a door', () => {
	const home = async (who: Parameters<typeof of.as>[0], client = of.cast().clients.bakery.id, at = of.cast().now) =>
		readHome(await of.as(who), client, of.stamp(at))

	test('every season that was published, the newest first', async () => {
		expect(await home('bakeryViewer')).toMatchObject({
			name: 'Marrowby Bakery',
			wall: '#3f5a60',
			today,
			currency: 'USD',
			lines: [
				{
					proposal: of.cast().proposals.bakery,
					season: { quarter: 'winter', year: 2026 },
					state: 'waiting for an answer',
				},
				{ proposal: of.cast().autumn.bakery, season: { quarter: 'autumn', year: 2026 }, state: 'installed' },
			],
		})
	})

	test('with what the client is to pay, tax and all: of the least palette until one is approved', async () => {
		const { bakery } = of.cast().proposals
		const { offer, hash } = found(await readOffer(await of.as('bakeryApprover'), bakery, of.stamp()))
		const { prices, key } = found(offer?.options[0])
		const bare = quote(prices, everything)
		expect(bare.netCents).toBeLessThan(bare.totalCents)
		expect((await home('bakeryViewer'))?.lines[0]?.totalCents).toBe(bare.totalCents)
		const choice = { places: {}, extras: ['lights'], leftOut: [] }
		const form = { option: key, purchaseOrder: '', browser: '', once: of.once() }
		const approval = { ...choice, ...form, proposal: bakery, revision: hash }
		expect((await approve(await of.as('bakeryApprover'), approval, of.stamp())).ok).toBe(true)
		const taken = quote(prices, choice)
		expect(taken.totalCents).not.toBe(bare.totalCents)
		expect((await home('bakeryViewer'))?.lines[0]?.totalCents).toBe(taken.totalCents)
	})

	test('no draft of one that never was out', async () => {
		const { bookshop, newcomer } = of.cast().clients
		expect((await home('bookshopApprover', bookshop.id))?.lines.map(({ proposal }) => proposal)).toEqual([
			of.cast().autumn.bookshop,
		])
		expect((await home('newcomerApprover', newcomer.id))?.lines).toEqual([])
	})

	test('lapsed by the day in the town', async () => {
		expect((await home('bakeryViewer', undefined, utc('2026-10-10T04:00')))?.lines[0]?.state).toBe('lapsed')
	})

	test.each(['dentalApprover', 'twoDoors', 'designer', 'helper', 'nobody', 'system'] as const)(
		'it is not there for %s, as for none',
		async (who) => {
			expect(await home(who)).toBeUndefined()
			expect(await home(who, absent)).toBeUndefined()
		},
	)
})
