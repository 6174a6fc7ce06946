/** How the wall behind the containers is made. */
export const wallKinds = ['clapboard', 'fieldstone', 'stucco', 'brick', 'shop glass'] as const
export type WallKind = (typeof wallKinds)[number]
