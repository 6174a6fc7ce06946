import { diceOf } from '../pen/dice-of'
import { remembered } from '../pen/remembered'
import { piecesOf } from '../piece/pieces-of'
import type { SceneLine } from '../scene'

/** What tells one look from another, colours apart: so that a palette changes colours and moves nothing. */
export const seedOf = ({ form, role, lengthCm, acrossCm }: SceneLine): string =>
	`${role}/${form}/${lengthCm}/${acrossCm}`

const mostKnown = 400

/** The pieces of a line in its own colours. Drawing them is most of the work of a picture, so they are kept for the next. */
export const drawnOnce = remembered(
	(line: SceneLine) => piecesOf(line, diceOf(seedOf(line))),
	(line) => `${seedOf(line)}/${line.hex}/${line.secondHex}`,
	mostKnown,
)
