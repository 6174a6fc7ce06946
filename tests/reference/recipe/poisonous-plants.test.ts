import { describe, expect, test } from 'vitest'
import { listedHazards } from '@/lib/recipe/almanac/poison'

const live = (name: string) => listedHazards(name, 'live')

// The ASPCA's list of plants toxic to dogs or cats, as pages quote it (the database itself could not be seen): almanac.com,
// 18 April 2020; emsaonline.com; vetetnous.com; xzhbc.com; nola.com, 17 March 2021; floridatoday.com, 3 June 2023.
describe('toxic to pets', () => {
	test.each([
		'English holly',
		'winterberry',
		'mistletoe',
		'amaryllis',
		'paperwhite narcissus',
		'daffodil',
		'clivia',
		'azalea',
		'rhododendron',
		'begonia',
		'chrysanthemum',
		'morning glory',
		'sweet potato vine',
		'hydrangea',
		'English ivy',
		'Easter lily',
		'sago palm',
		'poinsettia',
		'Japanese yew',
		'foxglove',
		'kalanchoe',
		'lily of the valley',
		'oleander',
		'cyclamen',
		'tulip',
	])('%s', (name) => {
		expect(live(name)).toContain('poisonous to pets')
	})

	// Lists of nurseries and of a veterinary practice: meadowsfarms.com, mountainviewanimalhospital.ca, gardeningchannel.com.
	test.each([
		'boxwood',
		'nandina',
		'hellebore',
		'Lenten rose',
		'euphorbia',
		'eucalyptus',
		'heavenly bamboo',
		'lantana',
	])('%s, of the lists of nurseries', (name) => {
		expect(live(name)).toContain('poisonous to pets')
	})

	// vetetnous.com, by the ASPCA: safe for pets.
	test.each(['aster', 'calamagrostis', 'carnation', 'fountain grass', 'pansy', 'sunflower'])(
		'%s is on no list',
		(name) => {
			expect(live(name)).toEqual([])
		},
	)
})

describe('poisonous to people', () => {
	// University of Georgia Extension, "Poisonous Plants in the Landscape", as told in its release of 30 November 2009.
	test.each(['amaryllis', 'calla lily', 'English ivy', 'holly', 'juniper', 'lantana', 'mistletoe', 'yew'])(
		'%s (Georgia)',
		(name) => {
			expect(live(name)).toContain('poisonous to people')
		},
	)

	// Massachusetts Poison Control System, plants of the holidays, as Child Health Alert has it.
	test.each(['mistletoe', 'Jerusalem cherry', 'yew', 'boxwood', 'holly', 'poinsettia'])(
		'%s (Massachusetts)',
		(name) => {
			expect(live(name)).toContain('poisonous to people')
		},
	)

	// Warren County master gardeners, "Toxic plants"; mercurynews.com, master gardener, 21 November 2012.
	test.each(['foxglove', 'caladium', 'hellebore', 'cyclamen', 'Christmas pepper', 'Christmas rose', 'narcissus'])(
		'%s (master gardeners)',
		(name) => {
			expect(live(name)).toContain('poisonous to people')
		},
	)

	// California Poison Control, as homegrowniowan.com has it: needles of pine, spruce and fir choke, and are not toxic.
	test.each(['white pine', 'blue spruce', 'noble fir', 'silver fir', 'douglas fir'])('%s is on no list', (name) => {
		expect(live(name)).toEqual([])
	})
})

// Common practice, no published source: what is made of plastic is swallowed, not poisonous.
test('faux berries are small parts, not poison', () => {
	expect(['faux winterberry', 'faux holly', 'yew garland'].flatMap((name) => listedHazards(name, 'faux'))).toEqual([])
})
