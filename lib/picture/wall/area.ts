/** What the paper shows, in cm; the foot of the wall lies at 0, up is negative. */
export type Area = { readonly left: number; readonly right: number; readonly top: number; readonly bottom: number }

export const widthOf = ({ left, right }: Area): number => right - left

/** Across which the wall is kept free: a door with its trim, in cm. */
export type Gap = { readonly from: number; readonly to: number }
