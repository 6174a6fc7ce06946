import type { Kind } from '../../look/hostile'

/** What each value of a draft is for, by its name. */
export const kinds: Readonly<Record<string, Kind>> = {
	title: 'words',
	letter: 'lines',
	name: 'words',
	echoes: 'words',
	words: 'words',
	hex: 'hex',
	key: 'key',
	container: 'id',
	containers: 'id',
	id: 'id',
	material: 'id',
	place: 'id',
	role: 'choice',
	holding: 'choice',
	design: 'choice',
	is: 'choice',
	count: 'number',
	minutes: 'number',
	supplementCents: 'money',
	cents: 'money',
	from: 'day',
	to: 'day',
	answerBy: 'day',
}
