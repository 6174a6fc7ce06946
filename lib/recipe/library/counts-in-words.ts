import { quantity } from '../../format/words'
import type { Planned } from '../planned'

const line = ({ material: { name, unit }, count }: Planned): string =>
	`${name} ${unit === 'piece' ? count : quantity(count, unit)}`

/** "white birch 12 stems, white pine 0.5 kg, brass globes 3": pieces by their number alone. */
export const countsInWords = (lines: readonly Planned[]): string => lines.map(line).join(', ')
