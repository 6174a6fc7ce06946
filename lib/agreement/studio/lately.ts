import type { Moment } from '../../units/day'

const twoDaysMs = 2 * 86_400_000

/** Whether somebody was reminded within two days: a second time asks for a second word. */
export const isLately = (last: Moment | null, at: Moment): last is Moment =>
	last !== null && Date.parse(at) - Date.parse(last) < twoDaysMs
