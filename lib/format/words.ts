const numbers = [
	'No',
	'One',
	'Two',
	'Three',
	'Four',
	'Five',
	'Six',
	'Seven',
	'Eight',
	'Nine',
	'Ten',
	'Eleven',
	'Twelve',
]

/** "Four" at the head of a sentence; figures above twelve. */
export const numberWord = (count: number): string => numbers[count] ?? String(count)

/** "a, b and c" */
export function list(items: readonly string[], joint = 'and'): string {
	if (items.length < 2) return items.join('')
	return `${items.slice(0, -1).join(', ')} ${joint} ${items.at(-1)}`
}

export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1)

/** "1 stem", "5 stems", "2.5 kg" */
export function quantity(count: number, unit: string): string {
	return `${count} ${unit}${count === 1 || unit === 'kg' ? '' : 's'}`
}

/** "52.3 %", "−13 %" */
export const percent = (value: number): string => `${value} %`.replace('-', '−')
