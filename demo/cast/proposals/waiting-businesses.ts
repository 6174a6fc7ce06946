import { paint } from '../palettes'
import { type CastProposal, extras } from './shape'

/** Out and unanswered. */
export const waitingBusinesses = {
	bakery: {
		title: 'Copper at the bakery door',
		letter:
			'Your baking pans are what one sees from the row before the smell arrives, so copper leads. Plum from the awning sits low between the greens, and birch stands up pale before the dark glass.\n\nThe box under the window repeats it at half height, so that the loaves stay in view.',
		containers: ['bakeryLeft', 'bakeryRight', 'bakeryBox'],
		mayLeaveOut: ['bakeryRight'],
		options: [
			{
				key: 'a',
				name: 'Copper and plum',
				palette: paint(
					'copperAndPlum',
					'your baking pans',
					'your awning',
					'pale before the glass',
					'two greens and a bark',
				),
				recipe: 'copperAndPlum',
			},
		],
		extras: [
			extras.lights('bakery', 2, 'One round each door pot, on at dusk and off when you close.'),
			extras.refresh('bakery'),
		],
		answerBy: 3,
		story: [
			{ on: -28, at: '14:05', does: 'save' },
			{ on: -9, at: '14:40', does: 'publish' },
			{ on: -8, at: '15:12', does: 'see', by: 'bakeryApprover' },
		],
	},
	dental: {
		title: 'Two planters by the white door',
		letter:
			'Between brick and a white door there is room for one strong pair, so the sign’s navy comes back in the bows and the handle’s brass in the globes. Box keeps the edge as neat as your waiting room.',
		containers: ['dentalLeft', 'dentalRight'],
		options: [
			{
				key: 'a',
				name: 'Brass and navy',
				palette: paint('brassAndNavy', 'your door handle', 'your sign', 'warms the brick', ''),
				recipe: 'brassAndNavy',
			},
		],
		extras: [extras.refresh('dental')],
		answerBy: 3,
		story: [
			{ on: -28, at: '15:20', does: 'save' },
			{ on: -6, at: '18:25', does: 'publish' },
		],
	},
	vet: {
		title: 'Frost by the clinic door',
		letter:
			'No yew, no holly and no box stand in these two, whoever stops to sniff. Frost picks up the glass of your door, the bows your sign, and the long trough walks people up the ramp.',
		containers: ['vetDoor', 'vetTrough'],
		options: [
			{
				key: 'a',
				name: 'Frost and violet',
				palette: paint('frostAndViolet', 'your frosted glass', 'your sign', 'cool beside the stucco'),
				recipe: 'petSafeFrost',
			},
		],
		extras: [extras.lights('vet', 2, 'Along the trough, so that the ramp shows after four.')],
		answerBy: 1,
		story: [
			{ on: -28, at: '16:10', does: 'save' },
			{ on: -10, at: '14:15', does: 'publish' },
			{ on: -9, at: '17:48', does: 'see', by: 'vetApprover' },
			{ on: -1, at: '14:30', does: 'remind' },
		],
	},
	chandlery: {
		title: 'Something that stands the spray',
		letter:
			'The quay door takes the westerly full on, so both pots are short, heavy and wired down. Yew and holly shrug off salt; the berries are there for the grey of your boards.',
		containers: ['chandleryLeft', 'chandleryRight'],
		options: [
			{
				key: 'a',
				name: 'Berries and yew',
				palette: paint('roseAndPewter', '', 'the anchor by your door', 'against grey boards', ''),
				recipe: 'berriesAndYew',
			},
		],
		answerBy: -5,
		design: 'repeat',
		story: [
			{ on: -28, at: '17:05', does: 'save' },
			{ on: -24, at: '15:45', does: 'publish' },
			{ on: -4, at: '15:00', does: 'note lapses' },
		],
	},
} as const satisfies Record<string, CastProposal>
