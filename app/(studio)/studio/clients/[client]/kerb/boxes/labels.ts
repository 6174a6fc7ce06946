import type { LengthUnit } from '@/lib/format/length'
import { containerNumbers } from '@/lib/forms/places/kerb-fields'
import type { Typed } from '@/lib/forms/read'

/** What each box of a new place is called. */
export const placeLabels = {
	'new.name': 'Name of the place',
	'new.address': 'Address',
	'new.wallKind': 'Wall',
	'new.wallHex': 'Colour of the wall',
	'new.accessNote': 'Access',
	'new.taxPercent': 'Sales tax here, per cent',
	'new.driveMinutes': 'Minutes from your base',
} as const

/** What each box of a container is called. */
export const boxLabels: Readonly<Record<string, string>> = {
	name: 'Where it stands',
	shape: 'Shape',
	topCm: 'Across at the rim',
	topDepthCm: 'Front to back, rim',
	bottomCm: 'Across at the foot',
	bottomDepthCm: 'Front to back, foot',
	heightCm: 'Height',
	sillToGlassCm: 'Sill to glass',
	wall: 'Material',
	colour: 'Its colour',
	light: 'Light',
	stands: 'Stands',
	waterer: 'Who waters',
	limitedWeight: 'Weight limited by',
	owner: 'Whose it is',
	walkLeftCm: 'Width of the walk left',
	wallCm: 'Thickness of the wall',
	headspaceCm: 'From soil to rim',
	soilDepthCm: 'True depth of soil',
}

/** What each box of the page is called where something is wrong with it. */
export function labelsOf(typed: Typed): Readonly<Record<string, string>> {
	const numbers = containerNumbers(typed)
	const containers = numbers.flatMap((number, index) =>
		Object.entries(boxLabels).map(([box, label]) => [
			`container.${number}.${box}`,
			numbers.length === 1 ? label : `Container ${index + 1}, ${label.toLowerCase()}`,
		]),
	)
	return { ...placeLabels, place: 'Place', photo: 'Photo', ...Object.fromEntries(containers) }
}

export const howToType: Readonly<Record<LengthUnit, string>> = {
	in: 'In inches: 18 1/2, 18½ or 18.5. Another unit with its name: 46 cm.',
	cm: 'In centimetres, as in 46.5. Another unit with its name: 18 1/2 in.',
}
