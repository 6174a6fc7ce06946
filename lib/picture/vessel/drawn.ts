/** A vessel in two parts, between which its planting stands: mouth with soil, and the side that hides the feet of the stems. */
export type Drawn = { readonly back: string; readonly front: string }
