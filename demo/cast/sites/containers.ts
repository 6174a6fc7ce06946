import { round, smallRound, square, trough, urn, type Vessel, windowBox } from '../vessels'
import type { PlaceKey } from './places'

export type CastContainer = Vessel & { readonly place: PlaceKey }

const at = (place: PlaceKey, vessel: Vessel): CastContainer => ({ place, ...vessel })

/** Where each stands is in its name; colours are the vessels' own. */
export const containers = {
	bakeryLeft: at('bakery', round('Left of the door', '#2f3336', { walkLeftCm: 140 })),
	bakeryRight: at('bakery', round('Right of the door', '#2f3336', { walkLeftCm: 112 })),
	bakeryBox: at('bakery', windowBox('Window box', '#5b4636', { isUnderEave: true })),
	dentalLeft: at('dental', square('Left planter', '#d9d5cb', { stands: 'against a wall', waterer: 'studio' })),
	dentalRight: at('dental', square('Right planter', '#d9d5cb', { stands: 'against a wall', waterer: 'studio' })),
	innStepsLeft: at('inn', urn('Left urn at the steps', '#3a3b3b', { isWindy: true })),
	innStepsRight: at('inn', urn('Right urn at the steps', '#3a3b3b', { isWindy: true })),
	innTerrace: at('inn', trough('Terrace trough', '#4a4741', { limitedWeight: 'deck', hoseNear: true })),
	bookshopDoor: at('bookshop', round('Door planter', '#23272a', { stands: 'in a corner' })),
	bookshopBox: at('bookshop', windowBox('Window box', '#34383a', { outletNear: false })),
	creditUnionLeft: at('creditUnion', square('Left of the doors', '#45494c', { owner: 'studio' })),
	creditUnionRight: at('creditUnion', square('Right of the doors', '#45494c', { owner: 'studio' })),
	creditUnionStepLeft: at('creditUnion', round('Lower step, left', '#45494c', { hasRoadSalt: true })),
	creditUnionStepRight: at('creditUnion', round('Lower step, right', '#45494c', { hasRoadSalt: true })),
	branchLeft: at('creditUnionBranch', round('Branch door, left', '#6f6a60', { outletNear: false })),
	branchRight: at('creditUnionBranch', round('Branch door, right', '#6f6a60', { outletNear: false })),
	vetDoor: at('vet', round('Door planter', '#e3e2dc', { light: 'shade' })),
	vetTrough: at('vet', trough('Trough by the ramp', '#8f979b', { stands: 'against a wall', walkLeftCm: 152 })),
	bicyclesDoor: at('bicycles', round('Workshop door', '#6a4a33', { light: 'sun', hoseNear: true })),
	bicyclesKerb: at('bicycles', round('At the kerb', '#6a4a33', { light: 'sun', hasRoadSalt: true })),
	chandleryLeft: at('chandlery', smallRound('Left of the quay door', '#9c5a3c', { isWindy: true })),
	chandleryRight: at('chandlery', smallRound('Right of the quay door', '#9c5a3c', { isWindy: true })),
	clapboardLeft: at('clapboard', round('Left of the steps', '#4d5357')),
	clapboardRight: at('clapboard', round('Right of the steps', '#4d5357')),
	fieldstoneUrn: at('fieldstone', urn('Urn on the pier', '#6d6f68')),
	fieldstonePorch: at('fieldstone', round('Porch pot', '#5a4a3c', { isUnderEave: true, light: 'shade' })),
	boathouseDoor: at(
		'fieldstoneBoathouse',
		round('Tub at the boathouse', '#4f463c', { isWindy: true, outletNear: false }),
	),
	stuccoDoor: at('stucco', round('Door pot', '#f0e6d8', { stands: 'in a corner' })),
	stuccoBox: at('stucco', windowBox('Kitchen window', '#5b4a6b')),
	approvedLeft: at('approved', round('Left of the door', '#2c3c4a')),
	approvedRight: at('approved', round('Right of the door', '#2c3c4a')),
	skippedDoor: at('skipped', round('Side door pot', '#36423c')),
	withdrawnUrn: at('withdrawn', urn('Courtyard urn', '#5e5a52', { owner: 'studio' })),
	withdrawnPot: at('withdrawn', smallRound('Pot by the gate', '#a0644a', { owner: 'studio' })),
	cancelledLeft: at('cancelled', round('Left pot', '#3c4f5e')),
	cancelledRight: at('cancelled', round('Right pot', '#3c4f5e')),
	installedSteps: at('installed', square('Corner planter', '#333836')),
	installedBox: at('installed', windowBox('Balcony box', '#333836', { limitedWeight: 'balcony' })),
	unpricedPot: at('unpriced', round('Veranda pot', '#8a7f99')),
	unpricedTrough: at('unpriced', trough('Veranda trough', '#6f6a78', { limitedWeight: 'deck' })),
	newcomerPot: at('newcomer', round('Door pot', '#7a6a58')),
} as const

export type ContainerKey = keyof typeof containers
