/** Decoded pixels, row by row from the top left, 8 bits a channel, sRGB. */
export type Pixels = Uint8Array | Uint8ClampedArray

/** 1: grey; 2: grey and alpha; 3: red, green, blue; 4: those and alpha. */
export type PhotoSize = { readonly width: number; readonly height: number; readonly channels: 1 | 2 | 3 | 4 }

/** A place in a photo, as fractions of its width from the left and of its height from the top. */
export type Spot = { readonly x: number; readonly y: number }

const isCount = (of: number): boolean => Number.isSafeInteger(of) && of > 0

/** @throws when there are not as many pixels as the size says */
export function checkPhoto(pixels: Pixels, { width, height, channels }: PhotoSize): void {
	if (!isCount(width) || !isCount(height) || pixels.length !== width * height * channels)
		throw new Error(`photo: ${pixels.length} bytes are not ${width} × ${height} pixels of ${channels}`)
}

/** Where red, green, blue and alpha lie in a pixel; −1: opaque throughout. */
export const layoutOf = (channels: PhotoSize['channels']) =>
	channels < 3
		? { red: 0, green: 0, blue: 0, alpha: channels === 2 ? 1 : -1 }
		: { red: 0, green: 1, blue: 2, alpha: channels === 4 ? 3 : -1 }
