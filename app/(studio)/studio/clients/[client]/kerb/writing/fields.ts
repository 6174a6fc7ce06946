import { quantity } from '@/lib/format/words'
import { boxesOf, containerNumbers } from '@/lib/forms/places/kerb-fields'
import type { Known } from '../boxes/place-boxes'
import type { Fields } from '../kept/entry'

/** Numbers of the containers that stand in a form; there is always one. */
export function numbersIn(fields: Fields): readonly number[] {
	const numbers = containerNumbers(fields)
	return numbers.length === 0 ? [1] : numbers
}

export const withoutContainer = (fields: Fields, number: number): Fields =>
	Object.fromEntries(Object.entries(fields).filter(([name]) => !name.startsWith(`container.${number}.`)))

/** A container like another but for where it stands. */
export const likeAnother = (fields: Fields, other: number, number: number): Fields =>
	Object.fromEntries(
		Object.entries({ ...boxesOf(fields, other), name: '' }).map(([box, value]) => [
			`container.${number}.${box}`,
			value,
		]),
	)

function differs(box: Element): boolean {
	if (box instanceof HTMLTextAreaElement) return box.value !== box.defaultValue
	if (!(box instanceof HTMLInputElement) || box.type === 'hidden') return false
	return box.type === 'radio' || box.type === 'checkbox'
		? box.checked !== box.defaultChecked
		: box.value !== box.defaultValue
}

/** Whether something was filled in before the page's scripts came. */
export const isTouched = (form: HTMLFormElement): boolean => [...form.elements].some(differs)

/** "Garden gate, 2 containers" */
export function titleOf(fields: Fields, known: readonly Known[]): string {
	const there = known.find(({ id }) => id === fields.place)?.name
	const called = there ?? (fields['new.name']?.trim() || 'a new place')
	return `${called}, ${quantity(numbersIn(fields).length, 'container')}`
}
