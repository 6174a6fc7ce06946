import { done, left } from './autumn-story'

/** The season before: one palette each, and all of it past. */
export const autumnBusinesses = {
	bakery: done(
		{
			title: 'Wheat at the bakery door',
			letter:
				'It is what you bake, so it may as well stand outside. Russet goes with your door and the wheat is seen above the loaves.',
			containers: ['bakeryLeft', 'bakeryRight', 'bakeryBox'],
		},
		{ recipe: 'wheatAndRusset', palette: 'harvest', echoes: ['your crusts', 'your door', ''] },
		'bakeryApprover',
		-60,
		-22,
	),
	dental: done(
		{
			title: 'Something calm before the chair',
			letter: 'Kale and sedge move a little in the alley’s draught, and nothing in them shouts beside the brick.',
			containers: ['dentalLeft', 'dentalRight'],
		},
		{ recipe: 'sedgeAndKale', palette: 'heather', echoes: ['your brick in the evening', 'your door', ''] },
		'dentalApprover',
		-55,
		-22,
	),
	inn: done(
		{
			title: 'Autumn on the inn steps',
			letter:
				'Quince and pepper bring the kitchen garden down to the quay, and the purple grass stands up to the wind.',
			containers: ['innStepsLeft', 'innStepsRight', 'innTerrace'],
			agreement: { is: 'fixed', cents: 96_000, containers: ['innStepsLeft', 'innStepsRight', 'innTerrace'] },
		},
		{
			recipe: 'quinceAndPepper',
			palette: 'harvest',
			echoes: ['your lamp light', 'your roof', 'the moss on the stone'],
		},
		'innApprover',
		-59,
		-21,
	),
	bookshop: left(
		{
			title: 'Old paper and kale',
			letter: 'The greys of the shop front take heather well, and kale lasts as long as a good stock of almanacs.',
			containers: ['bookshopDoor', 'bookshopBox'],
		},
		{ recipe: 'sedgeAndKale', palette: 'heather', echoes: ['', 'your lettering', ''] },
		'bookshopApprover',
		-52,
		'The front is being painted until November.',
	),
	creditUnion: done(
		{
			title: 'Harvest on Harbour Square',
			letter: 'Wheat is tall enough for the square and the quince warms the navy doors. Both houses get the same pair.',
			containers: [
				'creditUnionLeft',
				'creditUnionRight',
				'creditUnionStepLeft',
				'creditUnionStepRight',
				'branchLeft',
				'branchRight',
			],
			agreement: { is: 'discount', percent: 5 },
		},
		{ recipe: 'wheatAndRusset', palette: 'harvest', echoes: ['your hand rail', 'your brick', ''] },
		'creditUnionApprover',
		-57,
		-20,
		'PO-3102',
	),
	bicycles: done(
		{
			title: 'Grass for the workshop',
			letter: 'Sedge leans the way your wheels do, and takes a knock from a handlebar. Kale fills in at the kerb.',
			containers: ['bicyclesDoor', 'bicyclesKerb'],
		},
		{ recipe: 'sedgeAndKale', palette: 'heather', echoes: ['', 'your spokes', 'your door in shade'] },
		'bicyclesApprover',
		-56,
		-20,
	),
	chandlery: done(
		{
			title: 'Russet on the quay',
			letter: 'Short and stout for the westerly, with sage for the grey of your boards.',
			containers: ['chandleryLeft', 'chandleryRight'],
		},
		{ recipe: 'wheatAndRusset', palette: 'harvest', echoes: ['rope in the sun', 'the anchor’s rust', 'your boards'] },
		'chandleryApprover',
		-51,
		-21,
	),
}
