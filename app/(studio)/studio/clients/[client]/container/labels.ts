/** What each box of the card is called, but for the vessel's weight, which is in the studio's unit. */
export const boxLabels = {
	name: 'Name',
	colour: 'Its colour',
	topCm: 'Across at the rim',
	topDepthCm: 'Front to back at the rim',
	bottomCm: 'Across at the foot',
	bottomDepthCm: 'Front to back at the foot',
	heightCm: 'Height',
	wallCm: 'Thickness of the wall',
	headspaceCm: 'From soil to rim',
	soilDepthCm: 'True depth of soil',
	sillToGlassCm: 'From sill to glass',
	walkLeftCm: 'Width of the walk left',
	shape: 'Shape',
	wall: 'Material',
	owner: 'Whose it is',
	light: 'Light',
	stands: 'Stands',
	waterer: 'Who waters',
	limitedWeight: 'Weight limited by',
} as const

export type Box = keyof typeof boxLabels
