import type { LengthUnit } from '@/lib/format/length'
import { containerNumbers } from '@/lib/forms/places/kerb-fields'
import type { Typed } from '@/lib/forms/read'
import { type Box, boxLabels } from '../../container/labels'

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

/** What each box of a container is called: as on its card, shorter where two stand side by side. */
export const kerbLabels: Readonly<Record<Box, string>> = {
	...boxLabels,
	name: 'Where it stands',
	topDepthCm: 'Front to back, rim',
	bottomDepthCm: 'Front to back, foot',
	sillToGlassCm: 'Sill to glass',
}

/** What each box of the page is called where something is wrong with it. */
export function labelsOf(typed: Typed): Readonly<Record<string, string>> {
	const numbers = containerNumbers(typed)
	const containers = numbers.flatMap((number, index) =>
		Object.entries(kerbLabels).map(([box, label]) => [
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
