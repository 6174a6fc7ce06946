import { paint } from '../palettes'
import { type CastProposal, extras } from './shape'

/** Out and unanswered. */
export const waitingHouseholds = {
	clapboard: {
		title: 'Three winters for a red door',
		letter:
			'The white boards leave the choice to you, and the red door has a say in each. Rose goes with it, brass warms it, bone lets it be the only colour on the hill.\n\nPut each on the wall and look at it as you would from the gate.',
		containers: ['clapboardLeft', 'clapboardRight'],
		options: [
			{
				key: 'a',
				name: 'Rose and pewter',
				palette: paint('roseAndPewter', 'your hall paper', 'your slate steps', 'your door', ''),
				recipe: 'roseAndPewter',
			},
			{
				key: 'b',
				name: 'Brass and navy',
				palette: paint('brassAndNavy', 'warms the red', 'deepens the white', '', 'a hedge in small'),
				recipe: 'brassAndNavy',
			},
			{
				key: 'c',
				name: 'Bone and charcoal',
				palette: paint('boneAndCharcoal', 'your boards', 'your planters', ''),
				recipe: 'boneAndCharcoal',
			},
		],
		extras: [
			extras.lights('clapboard', 2, 'One in each pot, warm white, on a timer.'),
			extras.berries('clapboard', 10),
		],
		answerBy: 5,
		story: [
			{ on: -27, at: '14:10', does: 'save' },
			{ on: -7, at: '19:05', does: 'publish' },
			{ on: -6, at: '21:10', does: 'see', by: 'clapboardViewer' },
		],
	},
	fieldstone: {
		title: 'Stone, porch and boathouse',
		letter:
			'Fieldstone carries its own colours, lichen and rust and a little blue, and each of the three takes up one of them. The urn on the pier can be loose and tall; the porch pot stays low, for the terriers.\n\nThe boathouse is dark boards and water, so its tub need not match the porch: any of the three may go there by itself.',
		containers: ['fieldstoneUrn', 'fieldstonePorch', 'boathouseDoor'],
		mayLeaveOut: ['fieldstonePorch'],
		options: [
			{
				key: 'a',
				name: 'Rust and moss',
				palette: paint('rustAndMoss', 'your porch lamp', 'your lichen', 'bark on stone', ''),
				recipe: 'rustAndMoss',
			},
			{
				key: 'b',
				name: 'Copper and plum',
				palette: paint(
					'copperAndPlum',
					'your porch lamp',
					'the dark in the joints',
					'a light before the stone',
					'your door',
				),
				recipe: 'copperAndPlum',
			},
			{
				key: 'c',
				name: 'Frost and violet',
				palette: paint('frostAndViolet', 'the blue in the stone', 'your crocus bank, early', ''),
				recipe: 'frostAndViolet',
			},
		],
		answerBy: 4,
		story: [
			{ on: -27, at: '15:30', does: 'save' },
			{ on: -9, at: '18:50', does: 'publish' },
			{ on: -7, at: '20:20', does: 'see', by: 'fieldstoneApprover' },
		],
	},
	stucco: {
		title: 'Violet beside the street door',
		letter:
			'The warm stucco makes every violet look deeper, so your door gets company. Frost and spruce keep it cool, and the kitchen box says the same thing to the other side of the court.',
		containers: ['stuccoDoor', 'stuccoBox'],
		options: [
			{
				key: 'a',
				name: 'Frost and violet',
				palette: paint('frostAndViolet', 'your shutters', 'your door', 'cools the stucco'),
				recipe: 'frostAndViolet',
			},
		],
		extras: [extras.lights('stucco', 1, 'In the door pot, for the dark end of the court.')],
		answerBy: 4,
		story: [
			{ on: -27, at: '16:40', does: 'save' },
			{ on: -8, at: '14:55', does: 'publish' },
		],
	},
} as const satisfies Record<string, CastProposal>
