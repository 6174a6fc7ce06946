import { done } from './autumn-story'

/** The season before: one palette each, and all of it past. */
export const autumnHouseholds = {
	clapboard: done(
		{
			title: 'Heather by the red door',
			letter:
				'White boards want something soft in September. Kale and coral bells lean towards the red without meeting it.',
			containers: ['clapboardLeft', 'clapboardRight'],
		},
		{ recipe: 'sedgeAndKale', palette: 'heather', echoes: ['', 'your boards', 'your door'] },
		'clapboardApprover',
		-60,
		-19,
	),
	fieldstone: done(
		{
			title: 'Quince on the pier',
			letter:
				'The urn gets the purple grass, the porch the quince. The pepper and the mums are for looking at: keep the terriers from those two.',
			containers: ['fieldstoneUrn', 'fieldstonePorch'],
		},
		{ recipe: 'quinceAndPepper', palette: 'harvest', echoes: ['your lichen', 'your porch lamp', 'your door'] },
		'fieldstoneApprover',
		-58,
		-19,
	),
	stucco: done(
		{
			title: 'Kale for the court',
			letter: 'The violet door finds its echo in the kale, and the box over the court says it again.',
			containers: ['stuccoDoor', 'stuccoBox'],
		},
		{ recipe: 'sedgeAndKale', palette: 'heather', echoes: ['your door', 'your shutters', ''] },
		'stuccoApprover',
		-54,
		-18,
	),
	approved: done(
		{
			title: 'One pot of wheat',
			letter: 'Yellow above blue is a harvest already. One good pot on the left is enough until the second arrives.',
			containers: ['approvedLeft'],
		},
		{ recipe: 'wheatAndRusset', palette: 'harvest', echoes: ['your door', '', 'your boards, lighter'] },
		'approvedApprover',
		-60,
		-18,
	),
	skipped: done(
		{
			title: 'Russet by the side door',
			letter: 'Dark brick and green shutters make russet glow. It will be at its best when you leave for the south.',
			containers: ['skippedDoor'],
		},
		{ recipe: 'wheatAndRusset', palette: 'harvest', echoes: ['', 'your brick', 'your shutters'] },
		'skippedApprover',
		-53,
		-17,
	),
	cancelled: done(
		{
			title: 'Heather under blue',
			letter: 'A pair as even as the windows above, in heather and silver, with the blue door left to itself.',
			containers: ['cancelledLeft', 'cancelledRight'],
		},
		{ recipe: 'sedgeAndKale', palette: 'heather', echoes: ['', 'your boards', ''] },
		'cancelledApprover',
		-58,
		-17,
	),
	installed: done(
		{
			title: 'Early on the bend',
			letter: 'First in the street again: peppers at the corner while it is warm, and jenny over the balcony rail.',
			containers: ['installedSteps', 'installedBox'],
		},
		{ recipe: 'quinceAndPepper', palette: 'harvest', echoes: ['', 'your brick', ''] },
		'installedApprover',
		-61,
		-23,
	),
}
