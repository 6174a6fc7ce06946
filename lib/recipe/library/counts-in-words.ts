import { list, quantity } from '../../format/words'
import type { Planned } from '../planned'

const line = ({ material: { name, unit }, count }: Planned): string =>
	unit === 'piece' ? `${count} ${name}` : `${quantity(count, unit)} of ${name}`

/** "12 stems of white birch, 0.5 kg of white pine and 3 brass globes" */
export const countsInWords = (lines: readonly Planned[]): string => list(lines.map(line))
