import type { Holding } from '@/lib/recipe/material'
import type { Grows } from '@/lib/recipe/recipe'

export const wayWords: Readonly<Record<Grows['way'], string>> = {
	fixed: 'as written',
	stems: 'stems, up the middle',
	greens: 'greens, over the opening',
	rim: 'along the rim',
	faces: 'on each face',
	spacing: 'live, % of the opening',
	held: 'with what it holds',
}

/** What each way does, for whoever writes a first recipe. */
export const wayHelp: Readonly<Record<Grows['way'], string>> = {
	fixed: 'The same count in any pot; along a long box one for every 14 in or so.',
	stems: 'Slim stems in the middle: a wider pot takes more, but not in step with its opening.',
	greens: 'Cut greens: in step with the opening, fewer where a wall hides the back.',
	rim: 'What hangs over: in step with the rim that one sees.',
	faces: 'So many on each side that is looked at, in odd groups up to seven.',
	spacing:
		'Live plants: write the part of the opening that is theirs, such as 40; the spacing on their card does the rest.',
	held: 'Stakes, wire, tape: so many for each one of the line that they hold; with no line named, in step with the opening.',
}

export const holdingWords: Readonly<Record<Holding, string>> = { sold: 'sold', lent: 'lent', own: 'client’s own' }

export const lineLabels = {
	at: 'Order',
	material: 'Material',
	role: 'Role',
	way: 'Grows',
	count: 'Count or %',
	holds: 'Holds',
	holding: 'Whose it is',
	remove: 'Remove',
} as const
/** How much of a row a box takes on a phone, in sixths. */
export const spans: Readonly<Record<keyof typeof lineLabels, string>> = {
	at: 'col-span-1',
	material: 'col-span-5',
	role: 'col-span-2',
	way: 'col-span-4',
	count: 'col-span-2',
	holds: 'col-span-4',
	holding: 'col-span-4',
	remove: 'col-span-2',
}
export type LineField = keyof typeof lineLabels

/** What each box of the card is called, by its name. */
export function labelsOf(rows: number): Record<string, string> {
	const lines = Array.from({ length: rows }, (_, row) =>
		Object.entries(lineLabels).map(([field, label]) => [`${field}.${row}`, `${label}, line ${row + 1}`] as const),
	)
	return { name: 'Name', quarter: 'Season', note: 'Note for the studio', ...Object.fromEntries(lines.flat()) }
}
