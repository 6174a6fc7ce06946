/** "5b" of 5.5, "7a" of 7: USDA zones, whose halves are 5 °F each. */
export const zoneName = (zone: number): string => `${Math.floor(zone)}${zone % 1 >= 0.5 ? 'b' : 'a'}`

/** Coldest night of an average year at which a zone begins, in °F: zone 1a at −60, ten degrees a zone (USDA map). */
export const zoneFromF = (zone: number): number => -70 + 10 * zone

/**
 * Zones by which a plant in a container is hardier than its place is cold. Published advice is two: roots in a pot
 * freeze as roots in the ground do not (Brooklyn Botanic Garden, "Overwintering potted plants").
 */
export const zonesToSpare = (plantZone: number, placeZone: number): number => placeZone - plantZone

export const enoughToSpare = 2
export const leastToSpare = 1
