import { capital } from '../../../format/words'
import { enoughToSpare, leastToSpare, zoneName, zonesToSpare } from '../../almanac/zone'
import { finding } from '../finding'
import type { Check } from '../setting'

/** Live plants that a container will not carry through the winter of its place. */
export const hardiness: Check = (lines, { quarter, zone }) => {
	if (quarter !== 'winter' || zone === null) return []
	return lines.flatMap(({ material: { id, name, kind, zone: hardyTo } }) => {
		if (kind !== 'live' || hardyTo === null) return []
		const spare = zonesToSpare(hardyTo, zone)
		if (spare >= enoughToSpare) return []
		const says = `${capital(name)} can live through the winters of zone ${zoneName(hardyTo)}; roots in a pot freeze harder, and this place is zone ${zoneName(zone)}.`
		const mend = `Take one hardy to zone ${zoneName(Math.max(1, zone - enoughToSpare))}, or move it indoors before the ground freezes.`
		return [finding(`hardiness/${id}`, spare >= leastToSpare ? 'caution' : 'look again', says, mend)]
	})
}
