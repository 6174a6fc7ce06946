/** A pot is planted closer than a bed (common practice, no published source). */
const closer = 1.25

/** Area that a plant takes in staggered rows: s² · sin 60°. */
const areaCm2 = (spacingCm: number) => spacingCm ** 2 * Math.sin(Math.PI / 3)

/** Live plants for a share (0 to 1) of an opening, at their on-centre spacing in staggered rows; unrounded. */
export const plantsFor = (openingCm2: number, share: number, spacingCm: number): number =>
	(closer * share * openingCm2) / areaCm2(spacingCm)
