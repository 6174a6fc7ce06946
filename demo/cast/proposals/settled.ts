import { paint } from '../palettes'
import type { CastProposal } from './shape'

/** Without an approval: skipped, and taken back. */
export const settled = {
	skipped: {
		title: 'A pot at the side door',
		letter:
			'Since the front is never opened, all of it goes to the side door, where the brick is dark and the shutters green. Rose lifts both.',
		containers: ['skippedDoor'],
		options: [
			{
				key: 'a',
				name: 'Rose and pewter',
				palette: paint('roseAndPewter', 'lifts the brick', '', '', 'your shutters'),
				recipe: 'roseAndPewter',
			},
		],
		answerBy: -6,
		takeDown: true,
		story: [
			{ on: -26, at: '14:30', does: 'save' },
			{ on: -21, at: '15:25', does: 'publish' },
			{ on: -17, at: '18:55', does: 'skip', by: 'skippedApprover', why: 'We are away from December until March.' },
		],
	},
	withdrawn: {
		title: 'Bark and bone for the courtyard',
		letter:
			'The court is all grey stucco and gravel, so bark and cones do more there than any colour. Both pots can be seen from the landing.',
		containers: ['withdrawnUrn', 'withdrawnPot'],
		options: [
			{
				key: 'a',
				name: 'Bone and charcoal',
				palette: paint('boneAndCharcoal', 'the stucco', 'your gate', ''),
				recipe: 'boneAndCharcoal',
			},
		],
		answerBy: 2,
		story: [
			{ on: -26, at: '15:40', does: 'save' },
			{ on: -19, at: '19:10', does: 'publish' },
			{ on: -10, at: '15:05', does: 'withdraw', reason: 'The house was sold; the agent takes the urns to the yard.' },
		],
	},
} as const satisfies Record<string, CastProposal>
