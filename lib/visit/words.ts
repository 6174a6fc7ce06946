import { daySpan, longDay } from '../format/day'
import { capital } from '../format/words'
import type { Day } from '../units/day'
import type { PhotoSide, VisitKind, VisitState } from './visit'

const done: Readonly<Record<VisitKind, string>> = {
	install: 'Installed',
	refresh: 'Refreshed',
	watering: 'Watered',
	check: 'Checked',
	'take-down': 'Taken down',
}

type Told = { readonly kind: VisitKind; readonly state: VisitState; readonly day: Day | null; readonly came: string }

/** "Installed 3 December by Isolde", "Check planned for Friday 4 December", "Check to plan" */
export function visitWords({ kind, state, day, came }: Told): string {
	switch (state) {
		case 'to plan':
			return `${capital(kind)} to plan`
		case 'planned':
			return `${capital(kind)} planned${day === null ? '' : ` for ${longDay(day)}`}`
		case 'done':
			return `${done[kind]}${day === null ? '' : ` ${daySpan(day, day)}`}${came === '' ? '' : ` by ${came}`}`
		case 'dropped':
			return `${capital(kind)} dropped`
		default:
			return state satisfies never
	}
}

const shows: Readonly<Record<PhotoSide, string>> = {
	before: 'Before',
	after: 'After',
	wrong: 'What is wrong',
	front: 'The front',
}

export const sideWord = (side: PhotoSide): string => shows[side]
