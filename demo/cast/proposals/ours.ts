import { paint } from '../palettes'
import { type CastProposal, extras } from './shape'

/** Waiting for the studio: a change asked for, and what is still on the desk. */
export const ours = {
	inn: {
		title: 'Rust on the inn steps',
		letter:
			'The roof is the first thing one sees from the water, so its rust comes down to the steps and the moss of the stone fills in below. Your own lanterns stand in the terrace trough again.',
		containers: ['innStepsLeft', 'innStepsRight', 'innTerrace'],
		options: [
			{
				key: 'a',
				name: 'Rust and moss',
				palette: paint('rustAndMoss', 'your roof', 'the moss on the stone', '', 'your iron lanterns'),
				recipe: 'rustAndMoss',
				added: { innTerrace: [['ironLantern', 'accent', 'own', 2]] },
			},
			{
				key: 'b',
				name: 'Copper and plum',
				palette: paint('copperAndPlum', 'your roof at dusk', 'the wine list', 'pale on the stone', ''),
				recipe: 'copperAndPlum',
				added: { innTerrace: [['ironLantern', 'accent', 'own', 2]] },
				supplementCents: 6000,
			},
		],
		extras: [extras.refresh('inn')],
		answerBy: 6,
		agreement: { is: 'fixed', cents: 96_000, containers: ['innStepsLeft', 'innStepsRight', 'innTerrace'] },
		design: 'repeat',
		story: [
			{ on: -29, at: '14:20', does: 'save' },
			{ on: -12, at: '15:35', does: 'publish' },
			{ on: -11, at: '19:40', does: 'see', by: 'innApprover' },
			{
				on: -2,
				at: '20:15',
				does: 'ask for a change',
				by: 'innApprover',
				notes: [
					['innStepsLeft', 'Taller at the steps, please: from the quay the urns look short under the sign.'],
					['whole', 'And could all of it go in before the first weekend of the window? We have a wedding.'],
				],
			},
		],
	},
	bookshop: {
		title: 'Pale leaves for a dark shop front',
		letter:
			'Your lettering is the colour of old paper, and dried magnolia is its nearest kin. The box runs the length of the window, low enough for the new titles.',
		containers: ['bookshopDoor', 'bookshopBox'],
		options: [
			{
				key: 'a',
				name: 'Bone and charcoal',
				palette: paint('boneAndCharcoal', 'your lettering', 'your shop front', 'the backs of old books'),
				recipe: 'magnoliaWindow',
			},
		],
		answerBy: 10,
		story: [{ on: -3, at: '18:10', does: 'save' }],
	},
	bicycles: {
		title: 'A rust-red door in January',
		letter:
			'The workshop door is the warmest thing in the lane, so its red comes back in linen and in dogwood. Cones and juniper take the oil and the snow without complaint.',
		containers: ['bicyclesDoor', 'bicyclesKerb'],
		options: [
			{
				key: 'a',
				name: 'Rust and moss',
				palette: paint('rustAndMoss', 'your door', 'your tool board', '', ''),
				recipe: 'rustAndMoss',
			},
		],
		answerBy: 10,
		story: [{ on: -4, at: '19:25', does: 'save' }],
	},
	unpriced: {
		title: 'Lilac boards, three ways',
		letter:
			'Your door is the only lilac one on Gannet Hill, and all three ideas are built round it. The veranda trough is seen from below, so the greens hang well over its edge.',
		containers: ['unpricedPot', 'unpricedTrough'],
		options: [
			{
				key: 'a',
				name: 'Frost and violet',
				palette: paint('frostAndViolet', 'the trim', 'your door', 'the boards, darker'),
				recipe: 'frostAndViolet',
			},
			{
				key: 'b',
				name: 'Berries and yew',
				palette: paint('roseAndPewter', 'warms the boards', 'your roof', '', ''),
				recipe: 'berriesAndYew',
			},
			{
				key: 'c',
				name: 'Blue spruce alone',
				palette: paint('frostAndViolet', '', '', 'the whole of it'),
				recipe: null,
			},
		],
		answerBy: 10,
		story: [{ on: -27, at: '17:30', does: 'save' }],
	},
} as const satisfies Record<string, CastProposal>
