import { paint } from '../palettes'
import { type CastProposal, extras } from './shape'

/** Approved, and what became of it. */
export const approvals = {
	creditUnion: {
		title: 'Brass rails and navy doors',
		letter:
			'Harbour Square is wide, so the pair at the doors is built up and the lower steps stay in hand’s reach. The brass is your hand rail, the navy your doors, at both houses alike.\n\nAs agreed, the yearly discount is in.',
		containers: [
			'creditUnionLeft',
			'creditUnionRight',
			'creditUnionStepLeft',
			'creditUnionStepRight',
			'branchLeft',
			'branchRight',
		],
		options: [
			{
				key: 'a',
				name: 'Brass and navy',
				palette: paint('brassAndNavy', 'your hand rail', 'your doors', 'a light before brick', ''),
				recipe: 'brassAndNavy',
			},
		],
		extras: [extras.refresh('creditUnion')],
		answerBy: -10,
		design: 'repeat',
		agreement: { is: 'discount', percent: 5 },
		story: [
			{ on: -29, at: '15:50', does: 'save' },
			{ on: -20, at: '14:10', does: 'publish' },
			{ on: -19, at: '16:00', does: 'see', by: 'creditUnionViewer' },
			{ on: -15, at: '17:20', does: 'approve', by: 'creditUnionApprover', option: 'a', purchaseOrder: 'PO-3318' },
		],
	},
	approved: {
		title: 'A yellow door keeps its own light',
		letter:
			'With a yellow door on blue boards there is colour enough, so the pots bring bone, bark and quiet green. Each is full to the rim, for the view from the stairs.',
		containers: ['approvedLeft', 'approvedRight'],
		isNew: ['approvedRight'],
		options: [
			{
				key: 'a',
				name: 'Bone and charcoal',
				palette: paint('boneAndCharcoal', 'your window trim', 'your planters', ''),
				recipe: 'boneAndCharcoal',
			},
		],
		answerBy: -6,
		story: [
			{ on: -29, at: '16:35', does: 'save' },
			{ on: -22, at: '14:45', does: 'publish' },
			{ on: -21, at: '20:05', does: 'see', by: 'approvedApprover' },
			{
				on: -20,
				at: '20:40',
				does: 'ask for a change',
				by: 'approvedApprover',
				notes: [['whole', 'Lovely. Could the pots be lit? It is dark on Kelp Road by four.']],
			},
			{
				on: -19,
				at: '16:15',
				does: 'redraft',
				letter:
					'With a yellow door on blue boards there is colour enough, so the pots bring bone, bark and quiet green. Two strings of warm lights can come in now, as you asked; they sit deep, so that one sees the glow and not the wire.',
				extras: [extras.lights('approved', 2, 'Deep in the greens, one string a pot.')],
			},
			{ on: -18, at: '14:20', does: 'publish' },
			{ on: -16, at: '21:15', does: 'see', by: 'approvedApprover' },
			{ on: -14, at: '20:30', does: 'approve', by: 'approvedApprover', option: 'a', extras: ['lights'] },
		],
	},
	cancelled: {
		title: 'Brass under blue',
		letter:
			'Your blue door wants something warm at its feet, and brass is kinder to it than gold. The pair is even, like the windows above.',
		containers: ['cancelledLeft', 'cancelledRight'],
		options: [
			{
				key: 'a',
				name: 'Brass and navy',
				palette: paint('brassAndNavy', 'warms the door', 'your door, darker', '', ''),
				recipe: 'brassAndNavy',
			},
		],
		answerBy: -8,
		story: [
			{ on: -26, at: '16:50', does: 'save' },
			{ on: -23, at: '17:15', does: 'publish' },
			{ on: -19, at: '21:00', does: 'approve', by: 'cancelledApprover', option: 'a' },
			{ on: -6, at: '15:30', does: 'cancel', reason: 'Scaffold before the door until spring, by telephone.' },
		],
	},
	installed: {
		title: 'First on the bend',
		letter:
			'You asked to be the first in the street, so this goes in early and is built to last. Copper warms the brick on the corner, and the balcony box lets a little of it hang over the rail.',
		window: [-4, -3],
		containers: ['installedSteps', 'installedBox'],
		options: [
			{
				key: 'a',
				name: 'Copper and plum',
				palette: paint('copperAndPlum', 'your brick at noon', 'your balcony rail, softer', '', 'your door'),
				recipe: 'copperAndPlum',
			},
		],
		answerBy: -12,
		story: [
			{ on: -30, at: '14:15', does: 'save' },
			{ on: -25, at: '14:50', does: 'publish' },
			{ on: -24, at: '13:55', does: 'see', by: 'installedApprover' },
			{ on: -22, at: '20:45', does: 'approve', by: 'installedApprover', option: 'a' },
			{ on: -3, at: '19:20', does: 'install', reason: '' },
		],
	},
} as const satisfies Record<string, CastProposal>
