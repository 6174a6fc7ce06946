import type { TraitFields } from '@/db/catalogue/materials'
import { hex } from '@/lib/units/hex'

/** How a stem of red holly looks and stands. */
export const hollyTraits: TraitFields = {
	form: 'berries',
	secondHex: hex('#5d5148'),
	lengthCm: 61,
	acrossCm: 17,
	hadFrom: 10,
	hadTo: 12,
	lastsFrom: 11,
	lastsTo: 2,
	zone: 3.5,
	needs: 'sun or part',
	spacingCm: null,
	rootBallLitres: null,
	kgEach: 0.09,
	watts: null,
	mostEndToEnd: null,
	regulated: '',
}
